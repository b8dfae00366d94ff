autocmd BufRead,BufNewFile *.wall setfiletype wall
