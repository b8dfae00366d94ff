;;; features.el --- What a drafter does, by eglot's own commands -*- lexical-binding: t; -*-

;; Opens a wall with a misspelt name, looks at the finding, mends it, asks what a lite comes to,
;; completes, renames, saves. Prints what it saw, a line each; run by the project's tests.

(require 'wall-mode)
(require 'eglot)
(require 'flymake)

(setq wall-server-command (split-string (getenv "WALL_SERVER") "\n")
      eglot-autoreconnect nil
      eglot-send-changes-idle-time 0.05
      eglot-connect-timeout 60
      create-lockfiles nil
      make-backup-files nil)

(defun say (format &rest words)
  (princ (concat (replace-regexp-in-string "\n" " " (apply #'format format words)) "\n")))

(defun wait-for (what seen)
  (let ((turns 1500))
    (while (and (not (funcall seen)) (> (setq turns (1- turns)) 0))
      (accept-process-output nil 0.02)
      ;; what waits for Emacs to be idle: in batch it never is
      (when (eglot-managed-p) (eglot--signal-textDocument/didChange)))
    (when (= turns 0)
      (say "gave up: %s" what)
      (kill-emacs 1))))

(defun to (words column)
  (goto-char (point-min))
  (search-forward words)
  (goto-char (+ (match-beginning 0) column)))

(add-hook 'before-save-hook
          (lambda () (when (eglot-managed-p) (eglot-format-buffer))))
(find-file (getenv "WALL_FILE"))
(say "mode %s" major-mode)
(eglot (list major-mode) (project-current) 'eglot-lsp-server (wall--command) "wall")
(wait-for "diagnostic" #'flymake-diagnostics)
(let ((finding (car (flymake-diagnostics))))
  (goto-char (flymake-diagnostic-beg finding))
  (say "diagnostic %d:%d %s"
       (line-number-at-pos) (current-column) (flymake-diagnostic-text finding)))

;; the first is chosen, as a drafter would by the return key
(setq last-nonmenu-event ?\r)
(advice-add 'completing-read :override
            (lambda (_prompt choices &rest _)
              (let ((all (all-completions "" choices)))
                (say "offered %d %s" (length all) (car all))
                (car all))))
(eglot-code-actions (point) nil nil t)
(wait-for "mended" (lambda () (save-excursion (goto-char 1) (search-forward "as mullion" nil t))))
(wait-for "clean" (lambda () (null (flymake-diagnostics))))
(say "clean")

(to "V1  rows" 0)
(let (shown)
  (eglot-hover-eldoc-function (lambda (text &rest _) (setq shown text)))
  (wait-for "hover" (lambda () shown))
  (say "hover %s" shown))

(to "as mullion" 3)
(let ((offers (eglot-completion-at-point)))
  (dolist (offer (all-completions "" (nth 2 offers)))
    (say "offer %s" (substring-no-properties offer))))

(to "row rail" 4)
(eglot-rename "belt")
(say "renamed %s" (and (progn (goto-char 1) (search-forward "row belt" nil t))
                       (progn (goto-char 1) (search-forward "sill..belt" nil t))
                       t))

(to "clip all" 0)
(delete-region (line-beginning-position) (line-end-position))
(insert "       clip     all at sill")
(save-buffer)
(say "saved %s" (and (progn (goto-char 1) (search-forward "\n    clip all  at sill\n" nil t)) t))
(eglot-shutdown (eglot-current-server))
(say "stopped")
