#pragma once

#include "core/base/result.h"
#include "core/base/words.h"
#include "core/files/json.h"
#include "core/files/jsonline.h"
#include "core/files/jsonwords.h"

#include <string>
#include <string_view>

// For the files that are kept as JSON: included in .cpp files of this room only.
namespace files {

// What `read` makes of a text of JSON. Faults: Malformed; where it is no JSON with the line and
// `notOne`, a sentence without its stop ("this is not a file of harps"); for a member that
// lacks or is of another type in the words of jsonWords.
template<typename Read>
auto readJson(std::string_view text, std::string const& file, std::string const& notOne,
              Read const& read) -> decltype(read(Json()))
{
    using base::Fault;
    using base::FaultCode;
    try {
        return read(Json::parse(text));
    } catch (Json::parse_error const& error) {
        return Fault{FaultCode::Malformed,
                     file + ", " + base::say("line {}", lineOfByte(text, error.byte)), notOne};
    } catch (Json::exception const& error) {
        return Fault{FaultCode::Malformed, file, jsonWords(error.id, error.what())};
    }
}

// A fault of the value that the pointer names, with its line.
inline base::Fault faultAt(std::string_view text, std::string const& file,
                           std::string const& pointer, std::string const& detail)
{
    return {base::FaultCode::Malformed,
            file + ", " + base::say("line {}", lineOf(text, pointer)), detail};
}

} // namespace files
