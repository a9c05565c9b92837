#include "core/files/abc/verse.h"

#include "core/files/abc/text.h"

namespace files {

namespace {

constexpr std::size_t mostSteps = 2'000; // of a line

class VerseReader {
public:
    std::vector<VerseStep> read(std::string_view text)
    {
        for (std::size_t i = 0; i < text.size() && m_steps.size() < mostSteps; ++i) {
            char const c = text[i];
            if (c == '\\' && i + 1 < text.size() && text[i + 1] == '-')
                m_word += text[++i];
            else if (!takeSign(c))
                m_word += c == '~' ? ' ' : c;
        }
        endWord();
        return std::move(m_steps);
    }

private:
    bool takeSign(char c)
    {
        switch (c) {
        case ' ':
        case '\t':
            endWord();
            return true;
        case '-':
            hyphen();
            return true;
        case '_':
            endWord();
            m_steps.push_back({{"", false, true}, false});
            return true;
        case '*':
            endWord();
            m_steps.push_back({});
            return true;
        case '|':
            endWord();
            m_steps.push_back({{}, true});
            return true;
        default:
            return false;
        }
    }

    // A hyphen right behind a syllable parts the word there; any other holds it for a note.
    void hyphen()
    {
        if (m_word.empty()) {
            bool const goesOn = !m_steps.empty() && !m_steps.back().toNextBar;
            if (goesOn) m_steps.push_back({{"", m_steps.back().syllable.hyphen, true}, false});
            return;
        }
        endWord();
        m_steps.back().syllable.hyphen = true;
    }

    void endWord()
    {
        if (m_word.empty()) return;
        m_steps.push_back({{textString(m_word), false, false}, false});
        m_word.clear();
    }

    std::vector<VerseStep> m_steps;
    std::string m_word;
};

} // namespace

std::vector<VerseStep> verseSteps(std::string_view text) { return VerseReader().read(text); }

std::optional<std::vector<SymbolStep>> symbolSteps(std::string_view text)
{
    std::vector<SymbolStep> steps;
    for (std::size_t i = 0; i < text.size() && steps.size() < mostSteps; ++i) {
        char const c = text[i];
        if (c == ' ' || c == '\t') continue;
        if (c == '*') {
            steps.push_back({});
        } else if (c == '|') {
            steps.push_back({{}, true});
        } else if (c == '"' || c == '!' || c == '+') {
            std::size_t const end = text.find(c, i + 1);
            if (end == std::string_view::npos) return std::nullopt;
            steps.push_back({std::string(text.substr(i, end + 1 - i)), false});
            i = end;
        } else {
            return std::nullopt;
        }
    }
    return steps;
}

} // namespace files
