-- Starts the Mullwright language server for wall files, one server a workspace folder.
local M = {}

local settings = {
  cmd = { "mullwright", "serve" },
  -- what marks the folder that holds walls and catalogs together
  root_markers = { ".mullwright", ".git" },
}

-- server ids by workspace folder
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
  local root = root_of(vim.api.nvim_buf_get_name(buffer))
  local id = servers[root]
  if not id then
    id = vim.lsp.start_client({
      name = "mullwright",
      cmd = settings.cmd,
      root_dir = root,
      workspace_folders = { { uri = vim.uri_from_fname(root), name = root } },
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

--- Takes settings and attaches every wall file that is opened from here on.
function M.setup(given)
  settings = vim.tbl_extend("force", settings, given or {})
  local group = vim.api.nvim_create_augroup("mullwright", { clear = true })
  vim.api.nvim_create_autocmd("FileType", {
    group = group,
    pattern = "wall",
    callback = function(event)
      M.attach(event.buf)
    end,
  })
end

return M
