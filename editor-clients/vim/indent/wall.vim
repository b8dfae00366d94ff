" Blocks are indented by 'shiftwidth'; what a comma or a parenthesis goes on with by as much again.
if exists('b:did_indent')
  finish
endif
let b:did_indent = 1

setlocal indentexpr=GetWallIndent()
setlocal indentkeys=0},o,O,!^F
let b:undo_indent = 'setlocal indentexpr< indentkeys<'

if exists('*GetWallIndent')
  finish
endif

" Without what stands in quotes or behind //. A mark of inches after a digit opens no quotes.
function! s:bare(line) abort
  return substitute(substitute(a:line, '\%(^\|\D\)\zs"[^"]*"', '', 'g'), '//.*$', '', '')
endfunction

function! GetWallIndent() abort
  let above = prevnonblank(v:lnum - 1)
  if above == 0
    return 0
  endif
  let line = s:bare(getline(above))
  let indent = indent(above)
  let before = s:bare(getline(prevnonblank(above - 1)))
  if before =~# ',\s*$'
    let indent -= shiftwidth()
  endif
  if line =~# '{\s*$' || line =~# ',\s*$'
    let indent += shiftwidth()
  endif
  if getline(v:lnum) =~# '^\s*}'
    let indent -= shiftwidth()
  endif
  return max([indent, 0])
endfunction
