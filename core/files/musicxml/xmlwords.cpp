#include "core/files/musicxml/xmlwords.h"

#include "core/base/words.h"

namespace files {

std::string_view xmlWords(pugi::xml_parse_status status)
{
    switch (status) {
    case pugi::status_end_element_mismatch:
        return base::marked("it ends, or closes a part, before all is closed");
    case pugi::status_no_document_element:
        return base::marked("there is no score in it");
    case pugi::status_bad_start_element:
    case pugi::status_bad_end_element:
        return base::marked("a part begins or ends in the middle of a word");
    case pugi::status_bad_attribute:
        return base::marked("a value has no quotation marks round it");
    case pugi::status_bad_pi:
    case pugi::status_bad_comment:
    case pugi::status_bad_doctype:
    case pugi::status_unrecognized_tag:
        return base::marked("its first lines or a remark are cut off");
    case pugi::status_bad_cdata:
    case pugi::status_bad_pcdata:
        return base::marked("a text in it is cut off");
    case pugi::status_out_of_memory:
        return base::marked("it is too large to read");
    default:
        return base::marked("it cannot be read");
    }
}

} // namespace files
