#include <sys/resource.h>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <string_view>
#include <vector>

// Gives files to a fuzz entry one by one, where no fuzzer is at hand: each argument is a file,
// or a folder whose files are taken. With --mutated N first, N damaged copies of them instead:
// bits flipped, bytes put in, taken out or repeated, cut off; always the same ones. The last
// line says the longest time of one, of processor, and the most memory of all. Built with clang
// and -fsanitize=fuzzer the entry needs no main.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size);

namespace {

namespace fs = std::filesystem;

double processorSeconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

double give(std::string const& bytes)
{
    double const before = processorSeconds();
    LLVMFuzzerTestOneInput(reinterpret_cast<std::uint8_t const*>(bytes.data()), bytes.size());
    return processorSeconds() - before;
}

std::vector<std::string> filesIn(char** first, char** last)
{
    std::vector<fs::path> paths;
    for (; first != last; ++first) {
        if (!fs::is_directory(*first)) {
            paths.emplace_back(*first);
            continue;
        }
        for (auto const& entry : fs::directory_iterator(*first))
            if (entry.is_regular_file()) paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end()); // folders are read in any order
    std::vector<std::string> all;
    for (fs::path const& path : paths) {
        std::ifstream file(path, std::ios::binary);
        all.emplace_back(std::istreambuf_iterator<char>(file),
                         std::istreambuf_iterator<char>());
    }
    return all;
}

std::string mutated(std::string bytes, std::mt19937& random)
{
    auto const upTo = [&](std::size_t count) { return count == 0 ? 0 : random() % count; };
    for (std::size_t times = 1 + upTo(6); times > 0; --times) {
        std::size_t const at = upTo(bytes.size());
        std::size_t const length = 1 + upTo(40);
        switch (upTo(6)) {
        case 0:
            if (!bytes.empty()) bytes[at] = static_cast<char>(bytes[at] ^ (1 << upTo(8)));
            break;
        case 1:
            bytes.insert(at, 1, static_cast<char>(upTo(256)));
            break;
        case 2:
            bytes.erase(at, length);
            break;
        case 3:
            bytes.insert(at, bytes.substr(at, length));
            break;
        case 4:
            bytes.insert(at, std::to_string(random() * 9973U));
            break;
        default:
            if (upTo(8) == 0) bytes.resize(at);
        }
    }
    return bytes;
}

} // namespace

int main(int count, char** arguments)
{
    char** first = arguments + 1;
    char** const last = arguments + count;
    long mutations = 0;
    if (count > 2 && std::string_view(*first) == "--mutated") {
        mutations = std::atol(first[1]);
        first += 2;
    }
    std::vector<std::string> const all = filesIn(first, last);
    double longest = 0;
    long given = 0;
    if (mutations == 0)
        for (std::string const& bytes : all) {
            longest = std::max(longest, give(bytes));
            ++given;
        }
    std::mt19937 random(20240611); // fixed, so that a failure can be seen again
    for (; given < mutations && !all.empty(); ++given)
        longest = std::max(
            longest, give(mutated(all[static_cast<std::size_t>(given) % all.size()], random)));
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::printf("%ld inputs, the longest %.2f s, %ld MB at most\n", given, longest,
                used.ru_maxrss / 1024);
    return 0;
}
