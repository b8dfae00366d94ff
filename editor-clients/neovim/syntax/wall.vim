" Vim syntax of the wall language. The word lists are held against the grammar by a test.
scriptencoding utf-8
if exists('b:current_syntax')
  finish
endif
let s:cpo_saved = &cpo
set cpo&vim

let s:statements = split('use let units project catalog wall criteria grid members anchors lites'
      \ . ' fabrication installation lines line floor floors slab row face corner joint opening'
      \ . ' vertical horizontal splice reinforce bracket end-dam dead-load wind-load clip vision'
      \ . ' spandrel ladder stick')
let s:parts = split('system profile reinforcement sleeve shear-block clip anchor spread-plate glass'
      \ . ' gasket setting-block pressure-plate face-cap zone-dam fastener sealant metal isolation'
      \ . ' finish insulation')
let s:clauses = split('at from spaced skip only bays rows lines as with part sleeve like isolated'
      \ . ' bedded spread by on bolted gap slab edge clear mass offset through mark start others'
      \ . ' operable mirrored')
let s:joiners = split('all except every above below right left of to floor splices equal in x glass'
      \ . ' out up down behind before')
let s:remarks = split('note verify hold')
let s:units = split('mm cm m in2 ft2 mm2 cm2 m2 in3 mm3 cm3 in4 mm4 cm4 psf Pa kPa psi ksi MPa'
      \ . ' N/mm2 GPa lb lbf kip N kN kg lb·in kip·in N·m kN·m lb/ft kg/m plf lb/in N/m kN/m N/mm'
      \ . ' kg/m2 pcf kg/m3 F C K °F °C /F /C /K /°F /°C Btu/hft2F W/m2K Btu/hftF W/mK deg ° mph'
      \ . ' m/s % s min h')

" a name may hold a dash or a dot inside, so the word boundaries of Vim are not those of a wall
let s:not_inside = '%(\k|[-.])@1<!'
let s:not_before = '%([[:alnum:]_]|[-.][[:alnum:]_])@!'

function! s:any(words) abort
  let l:longest_first = reverse(sort(copy(a:words), {a, b -> len(a) - len(b)}))
  return '%(' . join(map(l:longest_first, 'escape(v:val, "/%.")'), '|') . ')'
endfunction

function! s:words(group, words) abort
  execute 'syntax match' a:group '"\v' . s:not_inside . s:any(a:words) . s:not_before . '"'
endfunction

function! s:first_words(group, words, after) abort
  execute 'syntax match' a:group '"\v%(^\s*)@<=' . s:any(a:words) . a:after . '"'
endfunction

syntax case match
syntax match wallName "\v[[:alpha:]_][[:alnum:]_]*%([-.][[:alnum:]_]+)*"
syntax match wallNumber "\v%([[:alnum:]_]|[[:alnum:]_][-.])@2<!%(\d+%(\.\d+)?|\.\d+)%([eE][-+]?\d+)?"
      \ nextgroup=wallUnit skipwhite
execute 'syntax match wallUnit contained "\v' . s:any(s:units) . s:not_before . '"'
call s:words('wallJoiner', s:joiners)
call s:words('wallClause', s:clauses)
call s:words('wallRemark', s:remarks)
syntax match wallProperty "\v%(^\s*)@<=[[:alpha:]_][[:alnum:]_]*%(-[[:alnum:]_]+)*"
call s:first_words('wallPart', s:parts, s:not_before)
call s:first_words('wallStatement', s:statements, s:not_before)
" lines of clauses inside braces of their own
call s:first_words('wallClause', ['at', 'from', 'part', 'isolated', 'spread', 'bedded', 'bolted',
      \ 'gap', 'offset', 'as', 'with'], s:not_before)
syntax match wallOperator "\v[-+*/@=]|\.\."
syntax region wallString start=/"/ end=/"/ oneline
syntax match wallLength
      \ "\v%(\d+%(\.\d+)?['′’]%(-|[ \t]*))?%(%(\d+%([ \t]+|-))?\d+/\d+|\d+%(\.\d+)?|\.\d+)[\"″”]"
syntax match wallLength "\v%([[:alnum:]_])@1<!\d+%(\.\d+)?['′’]%(%(-|[ \t]*)%(%(\d+[ \t]+)?\d+/\d+|\d+%(\.\d+)?)[\"″”])?"
syntax match wallComment "//.*$" contains=wallTodo,wallAllow,@Spell
syntax region wallComment start="/\*" end="\*/" contains=wallTodo,@Spell
syntax match wallDocumentation "///.*$" contains=wallTodo,@Spell
syntax match wallAllow contained "\v//\s*allow\s+[a-z-]+"
syntax keyword wallTodo contained TODO FIXME XXX
syntax sync minlines=200

highlight default link wallStatement Statement
highlight default link wallPart Structure
highlight default link wallProperty Identifier
highlight default link wallClause Keyword
highlight default link wallJoiner Operator
highlight default link wallRemark PreProc
highlight default link wallNumber Number
highlight default link wallLength Number
highlight default link wallUnit Type
highlight default link wallOperator Operator
highlight default link wallString String
highlight default link wallComment Comment
highlight default link wallDocumentation SpecialComment
highlight default link wallAllow PreProc
highlight default link wallTodo Todo

delfunction s:any
delfunction s:words
delfunction s:first_words
let b:current_syntax = 'wall'
let &cpo = s:cpo_saved
unlet s:cpo_saved
