// Holds recorded messages against the schema: node check.mjs SCHEMA FOLDER-OF-RECORDINGS
// Recordings are files *.jsonl, one message a line: {"from":"client"|"server","message":{…}}.
// Both directions are held. What a test or an editor sends and the protocol does not know stands in
// client-exceptions.json with its reason; recordings named there as "on purpose" send wrong things to
// see them refused, and only the server's side of them decides.
import fs from 'node:fs';
import path from 'node:path';
import Ajv from 'ajv';

const [schemaFile, folder] = process.argv.slice(2);
const schema = JSON.parse(fs.readFileSync(schemaFile, 'utf8'));
const ajv = new Ajv({ strict: false, allErrors: false });
ajv.addSchema(schema, 'lsp');
const validators = new Map();
const exceptions = JSON.parse(fs.readFileSync(new URL('client-exceptions.json', import.meta.url), 'utf8'));

function validator(type, method) {
  const key = `${type} ${method}`;
  if (!validators.has(key)) {
    const known = schema.definitions[type].properties[method];
    const pointer = method.replaceAll('~', '~0').replaceAll('/', '~1').replaceAll('$', '%24');
    validators.set(
      key,
      known === undefined
        ? null
        : ajv.compile({ $ref: `lsp#/definitions/${type}/properties/${pointer}` }));
  }
  return validators.get(key);
}

let held = 0;
let heldOfClients = 0;
const wrong = [];
const unknown = new Set();

function hold(type, method, value, where) {
  const valid = validator(type, method);
  if (valid === null) {
    unknown.add(`${type} ${method}`);
    return;
  }
  held++;
  if (!valid(value)) {
    wrong.push(`${where}: ${type} of ${method}: ${ajv.errorsText(valid.errors)}\n    ${JSON.stringify(value).slice(0, 300)}`);
  }
  counts(value, `${where}: ${method}`);
}

// the schema made from the types takes any number where the protocol counts: from 0, in whole steps
const COUNTED = new Set(['line', 'character', 'startLine', 'endLine', 'startCharacter', 'endCharacter',
  'deleteCount', 'activeSignature', 'activeParameter', 'tabSize']);
const LARGEST = 2 ** 31 - 1;

function isCount(value) {
  return Number.isInteger(value) && value >= 0 && value <= LARGEST;
}

function counts(value, where) {
  if (value === null || typeof value !== 'object') {
    return;
  }
  for (const [name, each] of Object.entries(value)) {
    if (COUNTED.has(name) && typeof each === 'number' && !isCount(each)) {
      wrong.push(`${where}: '${name}' is no count: ${each}`);
    }
    // tokens are counts in fives, each told from the one before
    if (name === 'data' && Array.isArray(each) && each.every((n) => typeof n === 'number')) {
      if (each.length % 5 !== 0 && !('deleteCount' in value)) {
        wrong.push(`${where}: tokens come in fives, not ${each.length}`);
      }
      if (!each.every(isCount)) {
        wrong.push(`${where}: a token is no count: ${each.find((n) => !isCount(n))}`);
      }
    }
    counts(each, where);
  }
  if (isRange(value) && (value.start.line > value.end.line
      || (value.start.line === value.end.line && value.start.character > value.end.character))) {
    wrong.push(`${where}: a range ends before it starts: ${JSON.stringify(value)}`);
  }
}

function isRange(value) {
  return value.start && value.end && typeof value.start === 'object' && 'line' in value.start && 'line' in value.end;
}

function excepted(file, method) {
  return Object.keys(exceptions).some(
    (name) => file.startsWith(name) && ['*', method].includes(exceptions[name].method));
}

function holdClient(file, message, where) {
  if (!message.method) {
    return; // an answer to the server: its form is the server's question's
  }
  if (excepted(file, message.method)) {
    return;
  }
  const type = message.id === undefined ? 'NotificationParams' : 'RequestParams';
  if (validator(type, message.method) === null) {
    return; // what the server does not offer it refuses, whatever it carries
  }
  heldOfClients++;
  const valid = validator(type, message.method);
  if (!valid(message.params)) {
    wrong.push(`${where}: client's ${message.method}: ${ajv.errorsText(valid.errors)}\n    ${JSON.stringify(message.params).slice(0, 300)}`);
  }
  counts(message.params, `${where}: client's ${message.method}`);
}

function read(line) {
  try {
    return JSON.parse(line);
  } catch (notJson) {
    return null;
  }
}

for (const file of fs.readdirSync(folder).filter((name) => name.endsWith('.jsonl')).sort()) {
  const asked = new Map();
  fs.readFileSync(path.join(folder, file), 'utf8').split('\n').filter(Boolean).forEach((line, index) => {
    const where = `${file}:${index + 1}`;
    const parsed = read(line);
    if (parsed === null) {
      // tests send malformed text on purpose; the server never may
      if (!line.startsWith('{"from":"client"')) {
        wrong.push(`${where}: not JSON`);
      }
      return;
    }
    const { from, message } = parsed;
    if (from === 'client') {
      if (message.id !== undefined && message.method) {
        asked.set(message.id, message.method);
      }
      holdClient(file, message, where);
      return;
    }
    if (message.jsonrpc !== '2.0') {
      wrong.push(`${where}: not JSON-RPC 2.0`);
    }
    if (message.method && message.id !== undefined && message.method.endsWith('/refresh') && message.method !== 'workspace/textDocumentContent/refresh') {
      held++;
      if (message.params !== undefined && message.params !== null) {
        wrong.push(`${where}: ${message.method} has no parameters in the protocol`);
      }
    } else if (message.method) {
      hold(message.id === undefined ? 'NotificationParams' : 'RequestParams', message.method, message.params, where);
    } else if (message.error) {
      held++;
      if (!Number.isInteger(message.error.code) || typeof message.error.message !== 'string' || (message.error.data !== undefined && message.error.code !== -32802)) {
        wrong.push(`${where}: error answer: ${JSON.stringify(message.error).slice(0, 300)}`);
      }
    } else {
      hold('Results', asked.get(message.id), message.result, where);
    }
  });
}

for (const method of [...unknown].sort()) {
  wrong.push(`no type is known for ${method}`);
}
console.log(wrong.slice(0, 40).join('\n'));
console.log(`${held} messages of the server and ${heldOfClients} of clients held against the protocol's types, ${wrong.length} wrong`);
process.exit(wrong.length === 0 && held > 0 ? 0 : 1);
