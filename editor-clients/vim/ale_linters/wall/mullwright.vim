" The language server, for ALE, which finds this file by itself.
call ale#linter#Define('wall', {
      \ 'name': 'mullwright',
      \ 'lsp': 'stdio',
      \ 'language': 'wall',
      \ 'executable': {buffer -> mullwright#command()[0]},
      \ 'command': {buffer -> '%e ' . join(map(mullwright#command()[1:], 'ale#Escape(v:val)'))},
      \ 'project_root': function('mullwright#root'),
      \})
