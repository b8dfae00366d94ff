// Holds recorded messages against the schema: node check.mjs SCHEMA FOLDER-OF-RECORDINGS
// Recordings are files *.jsonl, one message a line: {"from":"client"|"server","message":{…}}.
// Only what the server sends decides; what a test sends on purpose may be wrong.
import fs from 'node:fs';
import path from 'node:path';
import Ajv from 'ajv';

const [schemaFile, folder] = process.argv.slice(2);
const schema = JSON.parse(fs.readFileSync(schemaFile, 'utf8'));
const ajv = new Ajv({ strict: false, allErrors: false });
ajv.addSchema(schema, 'lsp');
const validators = new Map();

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
  positions(value, `${where}: ${method}`);
}

// the schema made from the types takes a position for any number: lines and characters count from 0
function positions(value, where) {
  if (value === null || typeof value !== 'object') {
    return;
  }
  if ('line' in value && 'character' in value) {
    if (!(Number.isInteger(value.line) && value.line >= 0 && Number.isInteger(value.character) && value.character >= 0)) {
      wrong.push(`${where}: no such position: ${JSON.stringify(value)}`);
    }
  }
  for (const each of Object.values(value)) {
    positions(each, where);
  }
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
      return;
    }
    if (message.jsonrpc !== '2.0') {
      wrong.push(`${where}: not JSON-RPC 2.0`);
    }
    if (message.method && message.id !== undefined && message.method.endsWith('/refresh')) {
      held++;
      if (message.params !== undefined && message.params !== null) {
        wrong.push(`${where}: ${message.method} has no parameters in the protocol`);
      }
    } else if (message.method) {
      hold(message.id === undefined ? 'NotificationParams' : 'RequestParams', message.method, message.params, where);
    } else if (message.error) {
      held++;
      if (!Number.isInteger(message.error.code) || typeof message.error.message !== 'string' || message.error.data !== undefined) {
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
console.log(`${held} messages of the server held against the protocol's types, ${wrong.length} wrong`);
process.exit(wrong.length === 0 && held > 0 ? 0 : 1);
