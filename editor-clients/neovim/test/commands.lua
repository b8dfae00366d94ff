-- Runs every command of the plugin on a wall, looks each up in the help, lays lines out by gq. Prints
-- what it saw, a line each; run by the project's tests.
local say = function(line)
  io.stdout:write("\n" .. line .. "\n")
end
local step = "start"
local waits = function(what, seen)
  step = what
  if not vim.wait(30000, seen, 20) then
    say("gave up: " .. what)
    vim.cmd("cquit")
  end
end
local notices = {}
vim.notify = function(words)
  table.insert(notices, words)
end
-- no browser is opened in a test: what would be is said
local opened
vim.fn.jobstart = function(command)
  opened = command[#command]
  return 1
end

vim.cmd("filetype plugin on")
require("mullwright").setup({ cmd = vim.split(vim.env.WALL_SERVER, "\n") })
vim.cmd("edit " .. vim.fn.fnameescape(vim.env.WALL_FILE))
local wall = vim.api.nvim_get_current_win()
waits("server", function()
  local client = vim.lsp.buf_get_clients()[1]
  return client and client.initialized
end)

vim.fn.search("clip all", "cw")
vim.api.nvim_set_current_line("       clip     all at sill")
vim.cmd("normal! gqq")
waits("laid out", function() return vim.api.nvim_get_current_line() == "    clip all  at sill" end)
say("laid out " .. vim.bo.formatexpr)

for _, what in ipairs(require("mullwright").shown) do
  vim.api.nvim_set_current_win(wall)
  vim.cmd("MullwrightShow " .. what)
  waits(what, function() return vim.api.nvim_buf_get_name(0):find("." .. what:lower() .. ".", 1, true) ~= nil end)
  say("shown " .. what .. " " .. vim.api.nvim_buf_line_count(0))
  vim.cmd("close")
end
vim.api.nvim_set_current_win(wall)
say("completes " .. table.concat(vim.fn.getcompletion("MullwrightShow C", "cmdline"), " "))
vim.cmd("MullwrightShow Nothing")
waits("refusal", function() return table.concat(notices):find("these can: Lengths", 1, true) ~= nil end)
say("refused")
if vim.fn.executable("xdg-open") + vim.fn.executable("open") == 0 then
  vim.fn.executable = function() return 1 end
end
vim.cmd("MullwrightDrawing")
waits("drawing", function() return opened ~= nil end)
say("opens " .. opened)

for _, tag in ipairs({ "mullwright", ":MullwrightShow", ":MullwrightDrawing", ":MullwrightMoveLine", "mullwright.show()" }) do
  vim.cmd("help " .. tag)
  say("help " .. vim.fn.expand("%:t") .. " " .. vim.fn.expand("<cWORD>"))
  vim.cmd("helpclose")
end
-- every link leads somewhere
vim.cmd("help mullwright")
local doc = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, true), "\n")
for link in doc:gmatch("|([^|%s]+)|") do
  if #vim.fn.getcompletion(link, "help") == 0 then
    say("gave up: no help for " .. link)
  end
end
vim.lsp.stop_client(vim.lsp.get_active_clients())
waits("stopped", function() return #vim.lsp.get_active_clients() == 0 end)
vim.cmd("qall!")
