#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

// Gives files to a fuzz entry one by one, where no fuzzer is at hand: each argument is a file,
// or a folder whose files are taken. Built with clang and -fsanitize=fuzzer the entry needs no
// main.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size);

namespace {

void replay(std::filesystem::path const& path)
{
    std::ifstream file(path, std::ios::binary);
    std::string const bytes((std::istreambuf_iterator<char>(file)),
                            std::istreambuf_iterator<char>());
    LLVMFuzzerTestOneInput(reinterpret_cast<std::uint8_t const*>(bytes.data()), bytes.size());
    std::printf("%s: %zu bytes\n", path.filename().string().c_str(), bytes.size());
}

} // namespace

int main(int count, char** arguments)
{
    for (int i = 1; i < count; ++i) {
        std::filesystem::path const path = arguments[i];
        if (!std::filesystem::is_directory(path)) {
            replay(path);
            continue;
        }
        for (auto const& entry : std::filesystem::directory_iterator(path))
            if (entry.is_regular_file()) replay(entry.path());
    }
    return 0;
}
