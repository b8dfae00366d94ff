-- Opens a wall, waits for its finding, takes the first quick fix, waits until the finding is gone,
-- lays the text out and saves. Prints what it saw, a line each; run by the project's tests.
local file = vim.env.WALL_FILE
local say = function(line)
  io.stdout:write(line .. "\n")
end
local give_up = function(why)
  say("gave up: " .. why)
  vim.cmd("cquit")
end

vim.cmd("filetype on")
require("mullwright").setup({ cmd = vim.split(vim.env.WALL_SERVER, "\n") })
vim.cmd("edit " .. vim.fn.fnameescape(file))
local buffer = vim.api.nvim_get_current_buf()
if vim.bo.filetype ~= "wall" then
  vim.bo.filetype = "wall"
end

local found = function()
  return vim.diagnostic.get(buffer, { severity = { min = vim.diagnostic.severity.WARN } })
end
if not vim.wait(20000, function() return #found() > 0 end, 20) then
  give_up("no diagnostic")
end
local finding = found()[1]
say("diagnostic " .. (finding.lnum + 1) .. " " .. tostring(finding.code) .. ": " .. finding.message)

local range = {
  start = { line = finding.lnum, character = finding.col },
  ["end"] = { line = finding.end_lnum, character = finding.end_col },
}
local answers = vim.lsp.buf_request_sync(buffer, "textDocument/codeAction", {
  textDocument = vim.lsp.util.make_text_document_params(buffer),
  range = range,
  context = { diagnostics = { finding.user_data.lsp and finding.user_data.lsp or {
    range = range, message = finding.message, code = finding.code, source = finding.source,
  } } },
}, 10000)
local action, client_id
for id, answer in pairs(answers or {}) do
  for _, each in ipairs(answer.result or {}) do
    if not action and (each.kind or ""):find("quickfix") then
      action, client_id = each, id
    end
  end
end
if not action then
  give_up("no quick fix")
end
local client = vim.lsp.get_client_by_id(client_id)
if not action.edit then
  local resolved = vim.lsp.buf_request_sync(buffer, "codeAction/resolve", action, 10000)
  action = resolved[client_id].result
end
say("fix " .. action.title)
vim.lsp.util.apply_workspace_edit(action.edit, client.offset_encoding)

if not vim.wait(20000, function() return #found() == 0 end, 20) then
  give_up("still there: " .. found()[1].message)
end
say("clean")

local hover = vim.lsp.buf_request_sync(buffer, "textDocument/hover", {
  textDocument = vim.lsp.util.make_text_document_params(buffer),
  position = range.start,
}, 10000)
say("hover " .. tostring(hover and hover[client_id] and hover[client_id].result ~= nil))

local edits = vim.lsp.buf_request_sync(buffer, "textDocument/formatting", {
  textDocument = vim.lsp.util.make_text_document_params(buffer),
  options = { tabSize = 2, insertSpaces = true },
}, 10000)
vim.lsp.util.apply_text_edits(edits[client_id].result or {}, buffer, client.offset_encoding)
vim.cmd("silent write")
say("saved")
vim.lsp.stop_client(client_id)
vim.cmd("qall!")
