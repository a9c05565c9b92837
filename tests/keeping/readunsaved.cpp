// Reads what a killed program left: a saved arrangement, or unsaved work. Prints how many steps are
// in it; answers 1 for what cannot be read whole.
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/files/work/unsaved.h"
#include "tests/places.h"

#include <iostream>

int main(int argc, char** argv)
{
    auto const tables = files::readTables(places::shared());
    if (!tables) return 2;
    for (int i = 1; i < argc; ++i) {
        std::string const file = argv[i];
        auto const text = files::readTextFile(file);
        if (!text) {
            std::cerr << base::sentence(text.error()) << '\n';
            return 1;
        }
        std::string document = *text;
        std::size_t steps = 0;
        if (file.ends_with(".unsaved")) {
            auto const unsaved = files::readUnsaved(*text, file);
            if (!unsaved) {
                std::cerr << base::sentence(unsaved.error()) << '\n';
                return 1;
            }
            document = unsaved->document;
            steps = unsaved->steps.size();
        }
        auto const work = files::readDocument(document, *tables, file);
        if (!work) {
            std::cerr << base::sentence(work.error()) << '\n';
            return 1;
        }
        std::cout << steps << ' ' << work->brief.locks.size() << ' ' << file << '\n';
    }
    return 0;
}
