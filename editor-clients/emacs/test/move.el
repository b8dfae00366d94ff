;;; move.el --- A grid line is moved, by a command of the mode -*- lexical-binding: t; -*-

;; Opens a wall and moves a grid line: the first answer lacks its unit, is refused and asked for
;; again. Prints what it saw, a line each; run by the project's tests.

(require 'wall-mode)
(require 'eglot)
(require 'flymake)

(setq wall-server-command (split-string (getenv "WALL_SERVER") "\n")
      eglot-autoreconnect nil
      eglot-confirm-server-initiated-edits nil
      eglot-connect-timeout 60
      create-lockfiles nil
      make-backup-files nil)

(defun say (format &rest words)
  (princ (concat (replace-regexp-in-string "\n" " " (apply #'format format words)) "\n")))

(find-file (getenv "WALL_FILE"))
(eglot (list major-mode) (project-current) 'eglot-lsp-server (wall--command) "wall")
(let ((answers '("2" "-2\"")))
  (advice-add 'read-string :override
              (lambda (prompt value &rest _)
                (say "asked %swith %s" prompt value)
                (pop answers))))
(goto-char (point-min))
(search-forward "bays A..B")
(backward-char)
(call-interactively #'wall-move-line)
(let ((turns 500))
  (while (and (not (save-excursion (goto-char 1) (search-forward "4'-10\"" nil t)))
              (> (setq turns (1- turns)) 0))
    (accept-process-output nil 0.02))
  (say (if (> turns 0) "moved" "gave up")))
(eglot-shutdown (eglot-current-server))
