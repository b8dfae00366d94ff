;;; wall-mode.el --- Major mode for the wall language -*- lexical-binding: t; -*-

;; Version: 0.1.0
;; Package-Requires: ((emacs "27.1"))
;; Keywords: languages, tools
;; SPDX-License-Identifier: Apache-2.0

;;; Commentary:

;; Colours, comments and indentation of *.wall files, and the server for eglot and lsp-mode.
;; The word lists are held against the grammar by a test of the project.

;;; Code:

(require 'cl-lib)

(defgroup wall nil
  "The wall language."
  :group 'languages)

(defcustom wall-server-command '("mullwright" "serve")
  "The command that starts the language server, as a list of words."
  :type '(repeat string))

(defcustom wall-indent-offset 2
  "Columns a block is indented by."
  :type 'integer
  :safe #'integerp)

(defconst wall--statements
  '("use" "let" "units" "project" "catalog" "wall" "criteria" "grid" "members" "anchors" "lites"
    "fabrication" "installation" "lines" "line" "floor" "floors" "slab" "row" "face" "corner"
    "joint" "opening" "vertical" "horizontal" "splice" "reinforce" "bracket" "end-dam" "dead-load"
    "wind-load" "clip" "vision" "spandrel" "ladder" "stick"))

(defconst wall--parts
  '("system" "profile" "reinforcement" "sleeve" "shear-block" "clip" "anchor" "spread-plate"
    "glass" "gasket" "setting-block" "pressure-plate" "face-cap" "zone-dam" "fastener" "sealant"
    "metal" "isolation" "finish" "insulation"))

(defconst wall--clauses
  '("at" "from" "spaced" "skip" "only" "bays" "rows" "lines" "as" "with" "part" "sleeve" "like"
    "isolated" "bedded" "spread" "by" "on" "bolted" "gap" "slab" "edge" "clear" "mass" "offset"
    "through" "mark" "start" "others" "operable" "mirrored"))

(defconst wall--joiners
  '("all" "except" "every" "above" "below" "right" "left" "of" "to" "floor" "splices" "equal" "in"
    "x" "glass" "out" "up" "down" "behind" "before"))

(defconst wall--remarks
  '("note" "verify" "hold"))

(defconst wall--units
  '("mm" "cm" "m" "in2" "ft2" "mm2" "cm2" "m2" "in3" "mm3" "cm3" "in4" "mm4" "cm4" "psf" "Pa" "kPa"
    "psi" "ksi" "MPa" "N/mm2" "GPa" "lb" "lbf" "kip" "N" "kN" "kg" "lb·in" "kip·in" "N·m" "kN·m"
    "lb/ft" "kg/m" "plf" "lb/in" "N/m" "kN/m" "N/mm" "kg/m2" "pcf" "kg/m3" "F" "C" "K" "°F" "°C"
    "/F" "/C" "/K" "/°F" "/°C" "Btu/hft2F" "W/m2K" "Btu/hftF" "W/mK" "deg" "°" "mph" "m/s" "%" "s"
    "min" "h"))

(eval-and-compile
  (defconst wall--length
    (concat "\\(?:[0-9]+\\(?:\\.[0-9]+\\)?['′’]\\(?:-\\|[ \t]*\\)\\)?"
            "\\(?:\\(?:[0-9]+\\(?:[ \t]+\\|-\\)\\)?[0-9]+/[0-9]+\\|[0-9]+\\(?:\\.[0-9]+\\)?\\|\\.[0-9]+\\)"
            "[\"″”]\\|[0-9]+\\(?:\\.[0-9]+\\)?['′’]")
    "A length in feet and inches; its inch mark is no quote."))

(defun wall--first (words)
  "A matcher of one of WORDS at the start of a line."
  (concat "^[ \t]*\\(" (regexp-opt words) "\\)\\_>"))

(defun wall--any (words)
  "A matcher of one of WORDS as a word of its own."
  (concat "\\_<\\(" (regexp-opt words) "\\)\\_>"))

(defvar wall-font-lock-keywords
  `((,(wall--first wall--statements) 1 font-lock-keyword-face)
    (,(wall--first wall--parts) 1 font-lock-type-face)
    (,(wall--first wall--clauses) 1 font-lock-builtin-face)
    ("^[ \t]*\\([[:alpha:]_][[:alnum:]_-]*\\)\\_>" 1 font-lock-variable-name-face)
    (,wall--length 0 font-lock-constant-face)
    (,(concat "\\_<\\(-?\\(?:[0-9]+\\(?:\\.[0-9]+\\)?\\|\\.[0-9]+\\)\\(?:[eE][+-]?[0-9]+\\)?\\)[ \t]*"
              (regexp-opt wall--units t) "\\(?:[^[:alnum:]_]\\|$\\)")
     (1 font-lock-constant-face) (2 font-lock-type-face))
    ("\\_<-?\\(?:[0-9]+\\(?:\\.[0-9]+\\)?\\|\\.[0-9]+\\)\\(?:[eE][+-]?[0-9]+\\)?\\_>"
     0 font-lock-constant-face)
    (,(wall--any wall--remarks) 1 font-lock-preprocessor-face)
    (,(wall--any wall--clauses) 1 font-lock-builtin-face)
    (,(wall--any wall--joiners) 1 font-lock-function-name-face)))

(defvar wall-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?/ ". 124b" table)
    (modify-syntax-entry ?* ". 23" table)
    (modify-syntax-entry ?\n "> b" table)
    ;; a quote after a digit is an inch mark: `wall--propertize' tells them apart
    (modify-syntax-entry ?\" "." table)
    (modify-syntax-entry ?\\ "." table)
    (modify-syntax-entry ?' "." table)
    (modify-syntax-entry ?- "_" table)
    (modify-syntax-entry ?_ "w" table)
    (modify-syntax-entry ?. "." table)
    (modify-syntax-entry ?% "." table)
    (modify-syntax-entry ?{ "(}" table)
    (modify-syntax-entry ?} "){" table)
    (modify-syntax-entry ?\( "()" table)
    (modify-syntax-entry ?\) ")(" table)
    table))

(defconst wall--propertize
  (syntax-propertize-rules
   ("//.*")
   ((concat wall--length "\\|\\(\"\\)[^\"\n]*\\(\"\\)") (1 "|") (2 "|"))))

(defun wall--comment-face (state)
  "The face of the comment or string that STATE is in."
  (cond ((nth 3 state) font-lock-string-face)
        ((save-excursion (goto-char (nth 8 state)) (looking-at-p "///")) font-lock-doc-face)
        (t font-lock-comment-face)))

(defun wall-indent-line ()
  "Indent a line by the blocks it stands in."
  (interactive)
  (let* ((depth (save-excursion
                  (back-to-indentation)
                  (- (car (syntax-ppss)) (if (looking-at-p "[})]") 1 0))))
         (column (* wall-indent-offset (max 0 depth))))
    (if (<= (current-column) (current-indentation))
        (indent-line-to column)
      (save-excursion (indent-line-to column)))))

;;;###autoload
(define-derived-mode wall-mode prog-mode "Wall"
  "Major mode for walls and the catalogs they use."
  (setq-local comment-start "// ")
  (setq-local comment-start-skip "\\(?://+\\|/\\*+\\)[ \t]*")
  (setq-local comment-end "")
  (setq-local indent-tabs-mode nil)
  (add-hook 'project-find-functions #'wall--project nil t)
  (setq-local indent-line-function #'wall-indent-line)
  (setq-local syntax-propertize-function wall--propertize)
  (setq-local font-lock-defaults
              '(wall-font-lock-keywords
                nil nil nil nil
                (font-lock-syntactic-face-function . wall--comment-face)))
  (setq-local imenu-generic-expression
              '((nil "^\\(?:wall\\|catalog\\|project\\)[ \t]+\\([^{\n]+?\\)[ \t]*{" 1)
                ("Parts" "^[ \t]+profile[ \t]+\\([^ {\n]+\\)" 1))))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.wall\\'" . wall-mode))

;; a folder with .mullwright holds walls and catalogs together
(defun wall--project (folder)
  "The project that FOLDER belongs to, if .mullwright says so."
  (let ((root (locate-dominating-file folder ".mullwright")))
    (and root (cons 'wall-project root))))

(declare-function project-root "project")
(with-eval-after-load 'project
  (cl-defmethod project-root ((project (head wall-project)))
    "The folder that holds walls and catalogs together."
    (cdr project)))

(defun wall--command (&rest _)
  "The server's command, asked for when it is started."
  wall-server-command)

(defvar eglot-server-programs)
(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs '(wall-mode . wall--command)))

(declare-function eglot-current-server "eglot")
(declare-function eglot--path-to-uri "eglot")
(declare-function eglot--pos-to-lsp-position "eglot")
(declare-function jsonrpc-request "jsonrpc")

;;;###autoload
(defun wall-move-line (by)
  "Move the grid line at point BY a length, its neighbours stay.
Asks for the length, and again if the server refuses it.  Needs eglot."
  (interactive (list (wall--how-far "" nil)))
  (let ((server (or (eglot-current-server) (user-error "The Mullwright server does not run")))
        (place (eglot--pos-to-lsp-position)))
    (while by
      (condition-case refused
          (progn
            (jsonrpc-request server :workspace/executeCommand
                             (list :command "mullwright.moveLine"
                                   :arguments (vector (eglot--path-to-uri buffer-file-name)
                                                      place by)))
            (setq by nil))
        (jsonrpc-error
         (setq by (wall--how-far
                   by (or (alist-get 'jsonrpc-error-message (cddr refused)) (cadr refused)))))))))

(defun wall--how-far (value refusal)
  "Ask for a length, with VALUE as given before and the REFUSAL it met."
  (read-string (concat (and refusal (concat refusal "\n"))
                       "How far to the right (-2 1/2\" for the left): ")
               value))

(declare-function lsp-register-client "lsp-mode")
(declare-function make-lsp-client "lsp-mode")
(declare-function lsp-stdio-connection "lsp-mode")
(defvar lsp-language-id-configuration)
(with-eval-after-load 'lsp-mode
  (add-to-list 'lsp-language-id-configuration '(wall-mode . "wall"))
  (lsp-register-client
   (make-lsp-client :new-connection (lsp-stdio-connection #'wall--command)
                    :major-modes '(wall-mode)
                    :server-id 'mullwright)))

(provide 'wall-mode)
;;; wall-mode.el ends here
