-- For Neovim 0.11 and later: vim.lsp.enable("mullwright").
return {
  cmd = { "mullwright", "serve" },
  filetypes = { "wall" },
  root_markers = { ".mullwright", ".git" },
}
