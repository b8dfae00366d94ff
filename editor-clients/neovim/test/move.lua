-- Opens a wall and moves a grid line: the first answer lacks its unit, is refused and asked for again.
-- Prints what it saw, a line each; run by the project's tests.
local say = function(line)
  io.stdout:write(line:gsub("\n", " ") .. "\n")
end

vim.cmd("filetype plugin on")
require("mullwright").setup({ cmd = vim.split(vim.env.WALL_SERVER, "\n") })
vim.cmd("edit " .. vim.fn.fnameescape(vim.env.WALL_FILE))
local buffer = vim.api.nvim_get_current_buf()
local text = function()
  return table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, true), "\n")
end
if not vim.wait(30000, function() return #vim.diagnostic.get(buffer) > 0 end, 20) then
  say("gave up: diagnostic")
  vim.cmd("cquit")
end

local answers = { "2", "-2\"" }
vim.ui.input = function(question, answered)
  say("asked " .. question.prompt .. "with " .. question.default)
  answered(table.remove(answers, 1))
end
vim.fn.search([[bays A..B]], "cwe")
require("mullwright").move_line()
if not vim.wait(30000, function() return text():find("4'-10\"", 1, true) ~= nil end, 20) then
  say("gave up: moved")
  vim.cmd("cquit")
end
say("moved")
vim.lsp.stop_client(vim.lsp.get_active_clients())
vim.cmd("qall!")
