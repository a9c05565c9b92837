#include "app/sound/oggserial.h"

#include <cstdint>
#include <fstream>
#include <iterator>
#include <string>

namespace sound {

namespace {

// The page of RFC 3533, section 6: where its fields begin.
constexpr std::size_t serialAt = 14;
constexpr std::size_t checksumAt = 22;
constexpr std::size_t segmentsAt = 26;
constexpr std::size_t tableAt = 27;
constexpr std::uint32_t serial = 1;

void putNumber(std::string& bytes, std::size_t at, std::uint32_t number)
{
    for (std::size_t i = 0; i < 4; ++i)
        bytes[at + i] = static_cast<char>(number >> (8 * i) & 0xff);
}

// Generator 04c11db7, from nothing, no bits turned round (RFC 3533, section 6, field 7).
std::uint32_t checksum(std::string const& bytes, std::size_t from, std::size_t length)
{
    std::uint32_t sum = 0;
    for (std::size_t i = from; i < from + length; ++i) {
        sum ^= static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[i])) << 24;
        for (int bit = 0; bit < 8; ++bit)
            sum = (sum & 0x80000000u) != 0 ? sum << 1 ^ 0x04c11db7u : sum << 1;
    }
    return sum;
}

// Length of the page that begins there; 0 if none does.
std::size_t pageLength(std::string const& bytes, std::size_t from)
{
    if (bytes.compare(from, 4, "OggS") != 0 || from + tableAt > bytes.size()) return 0;
    auto const byte = [&](std::size_t at) -> std::size_t {
        return static_cast<unsigned char>(bytes[from + at]);
    };
    std::size_t length = tableAt + byte(segmentsAt);
    if (from + length > bytes.size()) return 0;
    for (std::size_t i = tableAt, end = length; i < end; ++i) length += byte(i);
    return from + length > bytes.size() ? 0 : length;
}

} // namespace

bool fixSerial(std::filesystem::path const& oggFile)
{
    std::ifstream in(oggFile, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(in), {}};
    in.close();
    for (std::size_t at = 0; at < bytes.size();) {
        std::size_t const length = pageLength(bytes, at);
        if (length == 0) return false;
        putNumber(bytes, at + serialAt, serial);
        putNumber(bytes, at + checksumAt, 0);
        putNumber(bytes, at + checksumAt, checksum(bytes, at, length));
        at += length;
    }
    std::ofstream out(oggFile, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    out.close();
    return !out.fail();
}

} // namespace sound
