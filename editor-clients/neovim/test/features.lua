-- Opens a wall with a misspelt name and does what a drafter does, by Neovim's own commands: looks at
-- the finding, mends it, asks what a lite comes to, completes, renames, saves. Prints what it saw, a
-- line each; run by the project's tests.
local say = function(line)
  io.stdout:write(line:gsub("\n", " ") .. "\n")
end
local step = "start"
local waits = function(what, seen)
  step = what
  if not vim.wait(30000, seen, 20) then
    say("gave up: " .. what)
    vim.cmd("cquit")
  end
end

vim.cmd("filetype plugin on")
vim.cmd("syntax on")
require("mullwright").setup({ cmd = vim.split(vim.env.WALL_SERVER, "\n"), format_on_save = true })
vim.cmd("edit " .. vim.fn.fnameescape(vim.env.WALL_FILE))
local buffer = vim.api.nvim_get_current_buf()
say("filetype " .. vim.bo.filetype .. " syntax " .. tostring(vim.b.current_syntax))

local text = function()
  return table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, true), "\n")
end
local to = function(words, column)
  vim.fn.search("\\V" .. words, "cw")
  local at = vim.api.nvim_win_get_cursor(0)
  vim.api.nvim_win_set_cursor(0, { at[1], at[2] + (column or 0) })
end

waits("diagnostic", function() return #vim.diagnostic.get(buffer) > 0 end)
local finding = vim.diagnostic.get(buffer)[1]
say("diagnostic " .. (finding.lnum + 1) .. ":" .. finding.col .. " " .. tostring(finding.code))

vim.api.nvim_win_set_cursor(0, { finding.lnum + 1, finding.col })
vim.ui.select = function(items, _, chosen)
  say("offered " .. #items .. " " .. items[1][2].title)
  chosen(items[1], 1)
end
vim.lsp.buf.code_action()
waits("mended", function() return text():find("as mullion", 1, true) ~= nil end)
waits("clean", function() return #vim.diagnostic.get(buffer) == 0 end)
say("clean")

to("V1  rows", 1)
vim.lsp.buf.hover()
waits("hover", function()
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    if vim.api.nvim_win_get_config(window).relative ~= "" then
      local shown = vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, true)
      say("hover " .. table.concat(shown, " "))
      vim.api.nvim_win_close(window, true)
      return true
    end
  end
end)

to("as mullion", 3)
local offers = vim.lsp.buf_request_sync(buffer, "textDocument/completion",
  vim.lsp.util.make_position_params(), 30000)
for _, answer in pairs(offers or {}) do
  for _, item in ipairs(answer.result.items or answer.result) do
    say("offer " .. item.label)
  end
end

to("row rail", 4)
vim.lsp.buf.rename("belt")
waits("renamed", function() return text():find("sill..belt", 1, true) ~= nil end)
say("renamed " .. tostring(text():find("row belt", 1, true) ~= nil))

to("clip all", 0)
vim.api.nvim_set_current_line("       clip     all at sill")
vim.cmd("silent write")
say("saved " .. tostring(text():find("\n    clip all  at sill\n", 1, true) ~= nil))
vim.lsp.stop_client(vim.lsp.get_active_clients())
waits("stopped", function() return #vim.lsp.get_active_clients() == 0 end)
say("stopped")
vim.cmd("qall!")
