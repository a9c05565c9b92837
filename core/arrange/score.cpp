#include "core/arrange/score.h"

#include "core/base/tablename.h"

#include <numeric>

namespace arrange {

std::string_view termName(Term term)
{
#define TERM(Name, judge)                                                                      \
    case Term::Name: {                                                                         \
        static constexpr base::TableName name(#Name);                                          \
        return name.view();                                                                    \
    }
#define PAIR_TERM(Name) TERM(Name, )
    switch (term) {
#include "core/arrange/terms.def"
    }
    return {};
}

Points total(Account const& account)
{
    return std::accumulate(account.begin(), account.end(), Points{0});
}

} // namespace arrange
