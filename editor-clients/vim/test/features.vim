" Opens a wall with a misspelt name and does what a drafter does, by ALE's own commands: looks at the
" finding, mends it, asks what a lite comes to, completes, renames, saves. Appends what it saw to the
" file $WALL_LOG, a line each; run by the project's tests.
set nocompatible encoding=utf-8 hidden nomore
scriptencoding utf-8
execute 'set runtimepath^=' . fnameescape(expand('<sfile>:p:h:h'))
let g:mullwright_command = split($WALL_SERVER, "\n")
let g:ale_linters_explicit = 1
let g:ale_linters = {'wall': ['mullwright']}
let g:ale_fixers = {'wall': [function('mullwright#format')]}
let g:ale_fix_on_save = 1
let g:ale_hover_to_preview = 1
let g:ale_lint_delay = 20
packadd ale
filetype plugin on
syntax on
runtime autoload/ale/util.vim

function! s:say(line) abort
  call writefile([substitute(a:line, "\n", ' ', 'g')], $WALL_LOG, 'a')
endfunction

function! s:wait(what, Seen) abort
  for l:turn in range(1500)
    if a:Seen()
      return
    endif
    sleep 20m
  endfor
  throw 'waited in vain: ' . a:what
endfunction

function! s:text() abort
  return join(getline(1, '$'), "\n")
endfunction

function! s:findings() abort
  return ale#engine#GetLoclist(bufnr($WALL_FILE))
endfunction

function! s:to(words, column) abort
  call search('\V' . a:words, 'cw')
  call cursor(line('.'), col('.') + a:column)
endfunction

function! s:preview() abort
  return filter(range(1, winnr('$')), 'getwinvar(v:val, "&previewwindow")')
endfunction

" what is typed where ALE asks
function! ale#util#Input(message, value, ...) abort
  call s:say('asked ' . a:message)
  return s:typed
endfunction

" offers are taken in insert mode only, and a script is never in it
function! ale#util#Mode(...) abort
  return 'i'
endfunction

function! s:drafter() abort
  execute 'edit' fnameescape($WALL_FILE)
  call s:say('filetype ' . &filetype . ' syntax ' . get(b:, 'current_syntax', ''))
  call ale#Queue(0)
  call s:wait('diagnostic', {-> !empty(s:findings())})
  let l:finding = s:findings()[0]
  call s:say('diagnostic ' . l:finding.lnum . ':' . l:finding.col . ' ' . l:finding.code)

  call cursor(l:finding.lnum, l:finding.col)
  let s:typed = '1'
  ALECodeAction
  call s:wait('mended', {-> s:text() =~# 'as mullion'})
  call ale#Queue(0)
  call s:wait('clean', {-> empty(s:findings())})
  call s:say('clean')

  call s:to('V1  rows', 0)
  ALEHover
  call s:wait('hover', {-> !empty(s:preview())})
  call s:say('hover ' . join(getbufline(winbufnr(s:preview()[0]), 1, '$'), ' '))
  pclose!

  call s:to('as mullion', 3)
  let l:offers = []
  call ale#completion#GetCompletions('ale-callback', {'callback': {items -> extend(l:offers, items)}})
  call s:wait('completion', {-> !empty(l:offers)})
  for l:offer in l:offers
    call s:say('offer ' . l:offer.word)
  endfor

  call s:to('row rail', 4)
  let s:typed = 'belt'
  ALERename
  call s:wait('renamed', {-> s:text() =~# 'sill\.\.belt'})
  call s:say('renamed ' . (s:text() =~# 'row belt'))

  call s:to('clip all', 0)
  call setline('.', '       clip     all at sill')
  write
  call s:wait('laid out', {-> s:text() =~# "\n    clip all  at sill\n" && !&modified})
  call s:say('saved ' . (join(readfile($WALL_FILE), "\n") =~# "\n    clip all  at sill\n"))
  ALEStopAllLSPs
  call s:say('stopped')
endfunction

try
  call s:drafter()
catch
  call s:say('gave up: ' . v:exception . ' at ' . v:throwpoint)
  cquit!
endtry
qall!
