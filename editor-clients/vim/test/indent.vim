" Types a wall line by line and writes what came of it to $WALL_TYPED; run by the project's tests in
" Vim and in Neovim.
filetype plugin indent on
execute 'edit' fnameescape($WALL_FILE)
execute "normal! iproject \"A\" {\<CR>units inches\<CR>criteria {\<CR>wind service // {\<CR>}\<CR>}\<CR>wall W {\<CR>grid {\<CR>lines A..C spaced 5'-0\",\<CR>6'-0\"\<CR>row sill at 2\"\<CR>}\<CR>}\<Esc>"
execute 'write!' fnameescape($WALL_TYPED)
quit!
