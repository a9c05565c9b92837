#pragma once

#include "core/arrange/taste.h"
#include "core/base/tablename.h"

namespace arrange {

// Tells every figure as see(group, name, figure), by the names of shared/taste.json. `taste` is
// a Taste or a Taste const.
template<typename T, typename See>
void eachFigure(T& taste, See see)
{
#define GROUP(Type, member)                                                                    \
    {                                                                                          \
        auto& group = taste.member;                                                            \
        static constexpr base::TableName groupName(#member);
#define FIGURE(name, ...)                                                                      \
    {                                                                                          \
        static constexpr base::TableName figureName(#name);                                          \
        see(groupName.view(), figureName.view(), group.name);                                  \
    }
#define END }
#include "core/arrange/tastefigures.def"
}

} // namespace arrange
