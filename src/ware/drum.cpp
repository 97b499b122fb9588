#include "ware/drum.h"

#include "base/limit.h"
#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::ware {

namespace {

/// Drums of `sold` that the pieces, longest first, are cut from: each from the first that has room.
int count_of(Metres sold, const std::vector<Metres>& pieces) {
    std::vector<double> room;
    for (const Metres& piece : pieces) {
        const auto fits = std::find_if(room.begin(), room.end(),
                                       [&](double left) { return within(piece.number(), left); });
        if (fits == room.end()) {
            room.push_back(sold.number() - piece.number());
        } else {
            *fits -= piece.number();
        }
    }
    return static_cast<int>(room.size());
}

/// Fewer metres first, of the same fewer drums.
bool better(const Drums& a, const Drums& b) {
    if (b.count == 0) return true;
    const double x = a.sold.number() * a.count;
    const double y = b.sold.number() * b.count;
    return x < y || (x == y && a.count < b.count);
}

}  // namespace

Drums drums_for(const std::vector<tables::SoldRow>& sold, const std::string& what,
                std::vector<Metres> pieces) {
    std::sort(pieces.begin(), pieces.end(), [](Metres a, Metres b) { return b < a; });
    Drums best;
    if (pieces.empty()) return best;
    Metres total;
    for (const Metres& piece : pieces) total += piece;
    for (const tables::SoldRow& row : sold) {
        if (row.what != what || !within(pieces.front().number(), row.length.number())) continue;
        const int count = count_of(row.length, pieces);
        const Drums one{row.length, count, row.length * static_cast<double>(count) - total};
        if (better(one, best)) best = one;
    }
    return best;
}

Drums coils_for(const std::vector<tables::SoldRow>& sold, const std::string& what, Metres total) {
    Drums best;
    if (!(total > metres(0))) return best;
    for (const tables::SoldRow& row : sold) {
        if (row.what != what) continue;
        const double coils = std::ceil(total / row.length / (1 + limit_tolerance));
        const Drums one{row.length, static_cast<int>(coils), row.length * coils - total};
        if (better(one, best)) best = one;
    }
    return best;
}

std::string drums_words(const Drums& drums, const char* noun) {
    if (drums.count == 0) return fmt::format("longer than any usual {}", noun);
    const double left = std::max(0.0, drums.left.number());
    return fmt::format("{} {}{} of {} m, {} m left over", drums.count, noun,
                       drums.count == 1 ? "" : "s", significant(drums.sold.number(), 4),
                       significant(left, 3));
}

Metres whole_metres(Metres length) {
    return metres(std::ceil(length.number() * (1 - limit_tolerance)));
}

}  // namespace toft::ware
