-- Starts the Mullwright language server for wall files, one server a workspace folder.
local M = {}

local settings = {
  cmd = { "mullwright", "serve" },
  -- what marks the folder that holds walls and catalogs together
  root_markers = { ".mullwright", ".git" },
  -- lays a wall out before it is written
  format_on_save = false,
}

-- server ids by workspace folder, for Neovim before 0.11
local servers = {}

local function root_of(file)
  local folder = vim.fn.fnamemodify(file, ":p:h")
  local at = folder
  while true do
    for _, marker in ipairs(settings.root_markers) do
      local path = at .. "/" .. marker
      if vim.fn.isdirectory(path) == 1 or vim.fn.filereadable(path) == 1 then
        return at
      end
    end
    local up = vim.fn.fnamemodify(at, ":h")
    if up == at then
      return folder
    end
    at = up
  end
end

--- Attaches a buffer to the server of its workspace folder, starting it if need be.
function M.attach(buffer)
  local name = vim.api.nvim_buf_get_name(buffer)
  if name == "" then
    return nil
  end
  local root = root_of(name)
  local id = servers[root]
  if not id then
    id = vim.lsp.start_client({
      name = "mullwright",
      cmd = settings.cmd,
      root_dir = root,
      workspace_folders = { { uri = vim.uri_from_fname(root), name = root } },
      on_attach = function(_, attached)
        vim.api.nvim_buf_set_option(attached, "omnifunc", "v:lua.vim.lsp.omnifunc")
        vim.api.nvim_buf_set_option(attached, "formatexpr", "v:lua.vim.lsp.formatexpr(#{timeout_ms:5000})")
      end,
      on_exit = function()
        servers[root] = nil
      end,
    })
    if not id then
      return nil
    end
    servers[root] = id
  end
  vim.lsp.buf_attach_client(buffer, id)
  return id
end

local function format()
  if vim.lsp.buf.format then
    vim.lsp.buf.format({ name = "mullwright", timeout_ms = 5000 })
  else
    vim.lsp.buf.formatting_sync(nil, 5000)
  end
end

-- The client of a buffer: Neovim 0.7 has one way to find it, later versions another.
local function client_of(buffer)
  local get = vim.lsp.get_clients or vim.lsp.get_active_clients
  for _, client in ipairs(get()) do
    if client.name == "mullwright" and vim.lsp.buf_is_attached(buffer, client.id) then
      return client
    end
  end
  return nil
end

-- Asks the server to run one of its commands on the wall of a buffer; the answer goes to a function.
local function run(command, answered)
  local buffer = vim.api.nvim_get_current_buf()
  local client = client_of(buffer)
  if not client then
    vim.notify("The Mullwright server does not run for this text.", vim.log.levels.WARN)
    return
  end
  client.request("workspace/executeCommand", {
    command = command,
    arguments = { vim.uri_from_bufnr(buffer) },
  }, function(refused, answer)
    vim.schedule(function()
      if refused then
        vim.notify(refused.message, vim.log.levels.WARN)
      elseif not vim.lsp.handlers["window/showDocument"] then
        -- from 0.8 on the server shows it by itself
        answered(answer)
      end
    end)
  end, buffer)
end

-- What opens an address in a browser, by machine.
local openers = { "xdg-open", "open", "explorer.exe" }

--- Shows the live drawing of the wall in a browser.
function M.drawing()
  run("mullwright.preview", function(answer)
    for _, opener in ipairs(openers) do
      if vim.fn.executable(opener) == 1 then
        vim.fn.jobstart({ opener, answer.uri }, { detach = true })
        return
      end
    end
    -- the server has told the address
  end)
end

--- What can be shown, as the server spells it.
M.shown = { "Lengths", "Takeoff", "Glass", "Tickets", "Cut", "Sequence", "Calculations", "Explain" }

--- Shows what the command line prints of the wall, in a window of its own.
function M.show(what)
  if not vim.tbl_contains(M.shown, what) then
    vim.notify("“" .. what .. "” cannot be shown; these can: " .. table.concat(M.shown, ", ") .. ".", vim.log.levels.WARN)
    return
  end
  run("mullwright.show" .. what, function(answer)
    vim.cmd("split " .. vim.fn.fnameescape(vim.uri_to_fname(answer)))
  end)
end

local function commands()
  vim.api.nvim_create_user_command("MullwrightDrawing", M.drawing, {})
  vim.api.nvim_create_user_command("MullwrightMoveLine", M.move_line, {})
  vim.api.nvim_create_user_command("MullwrightShow", function(given)
    M.show(given.args)
  end, {
    nargs = 1,
    complete = function(begun)
      return vim.tbl_filter(function(what)
        return vim.startswith(what, begun)
      end, M.shown)
    end,
  })
end

--- Asks how far the grid line at the cursor is to move, and again if the server refuses the answer;
--- its neighbours stay.
function M.move_line()
  local buffer = vim.api.nvim_get_current_buf()
  local client = client_of(buffer)
  if not client then
    vim.notify("The Mullwright server does not run.", vim.log.levels.WARN)
    return
  end
  local place = vim.lsp.util.make_position_params(0, client.offset_encoding)
  local function ask(value, refusal)
    local question = "How far to the right (-2 1/2\" for the left): "
    vim.ui.input({ prompt = (refusal and refusal .. "\n" or "") .. question, default = value }, function(by)
      if not by or by == "" then
        return
      end
      client.request("workspace/executeCommand", {
        command = "mullwright.moveLine",
        arguments = { place.textDocument.uri, place.position, by },
      }, function(refused)
        if refused then
          vim.schedule(function()
            ask(by, refused.message)
          end)
        end
      end, buffer)
    end)
  end
  ask("", nil)
end

--- Takes settings and attaches every wall file that is opened from here on.
function M.setup(given)
  settings = vim.tbl_extend("force", settings, given or {})
  commands()
  local group = vim.api.nvim_create_augroup("mullwright", { clear = true })
  if vim.lsp.config and vim.lsp.enable then
    vim.lsp.config("mullwright", {
      cmd = settings.cmd,
      filetypes = { "wall" },
      root_markers = settings.root_markers,
    })
    vim.lsp.enable("mullwright")
  else
    vim.api.nvim_create_autocmd("FileType", {
      group = group,
      pattern = "wall",
      callback = function(event)
        -- before 0.8 an autocommand is not told its buffer in every case
        M.attach(event.buf or vim.api.nvim_get_current_buf())
      end,
    })
  end
  if settings.format_on_save then
    vim.api.nvim_create_autocmd("BufWritePre", { group = group, pattern = "*.wall", callback = format })
  end
end

return M
