" What Vim's clients of the language server have in common.

" The command that starts the server, as a list; set g:mullwright_command to say another.
function! mullwright#command() abort
  return get(g:, 'mullwright_command', ['mullwright', 'serve'])
endfunction

" The folder that holds walls and catalogs together: the nearest with .mullwright or .git, else the
" file's own.
function! mullwright#root(buffer) abort
  let l:file = fnamemodify(bufname(a:buffer), ':p')
  for l:mark in ['.mullwright', '.git']
    let l:found = finddir(l:mark, escape(fnamemodify(l:file, ':h'), ' ,') . ';')
    if l:found ==# ''
      let l:found = findfile(l:mark, escape(fnamemodify(l:file, ':h'), ' ,') . ';')
    endif
    if l:found !=# ''
      return fnamemodify(l:found, ':p:s?/$??:h')
    endif
  endfor
  return fnamemodify(l:file, ':h')
endfunction

" Lays a buffer out by `mullwright format`; for ALE's fixers.
function! mullwright#format(buffer) abort
  let l:command = mullwright#command()[:-2] + ['format', '-']
  return {'command': join(map(l:command, 'ale#Escape(v:val)'))}
endfunction
