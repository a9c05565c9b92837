# Completion of sallow for bash. Verbs and options are asked of the program itself.
_sallow()
{
    local word="${COMP_WORDS[COMP_CWORD]}" help
    if [ "$COMP_CWORD" -gt 1 ] && [[ "$word" == -* ]]; then
        help="$("${COMP_WORDS[0]}" "${COMP_WORDS[1]}" --help 2>/dev/null)"
        mapfile -t COMPREPLY < <(compgen -W "--language $(grep -oE -- '--[a-z-]+' <<<"$help" | sort -u)" -- "$word")
        return
    fi
    mapfile -t COMPREPLY < <(compgen -f -- "$word")
    if [ "$COMP_CWORD" -eq 1 ]; then
        help="$("${COMP_WORDS[0]}" --help 2>/dev/null)"
        help="$(sed -n '/^Commands:/,$ s/^  \([a-z]*\) .*/\1/p' <<<"$help") --help --version --language"
        mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -W "$help" -- "$word")
    fi
}
complete -o filenames -F _sallow sallow
