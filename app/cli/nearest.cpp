#include "app/cli/nearest.h"

#include <algorithm>

namespace cli {

namespace {

// Letters added, taken away, changed, or swapped with a neighbour: the distance of optimal string
// alignment (Damerau 1964).
std::size_t distance(std::string_view a, std::string_view b)
{
    std::vector<std::vector<std::size_t>> far(a.size() + 1,
                                              std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) far[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j) far[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            std::size_t const same = a[i - 1] == b[j - 1] ? 0 : 1;
            far[i][j] =
                std::min({far[i - 1][j] + 1, far[i][j - 1] + 1, far[i - 1][j - 1] + same});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                far[i][j] = std::min(far[i][j], far[i - 2][j - 2] + 1);
        }
    return far[a.size()][b.size()];
}

} // namespace

std::optional<std::string> nearestWord(std::string_view written,
                                       std::vector<std::string> const& known)
{
    constexpr std::size_t longest = 40; // no word of ours comes near it
    if (written.size() > longest) return std::nullopt;
    std::optional<std::string> nearest;
    std::size_t least = longest;
    for (std::string const& word : known) {
        std::size_t const far = distance(written, word);
        bool const near = 3 * far <= std::max(written.size(), word.size());
        if (near && far < least) {
            least = far;
            nearest = word;
        }
    }
    return nearest;
}

} // namespace cli
