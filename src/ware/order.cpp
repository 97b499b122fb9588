#include "ware/order.h"

#include "base/text.h"
#include "ware/drum.h"

#include <fmt/format.h>

namespace toft::ware {

namespace {

std::string metres_words(Metres length) { return significant(length.number(), 6) + " m"; }

Metres total_of(const std::vector<Metres>& pieces) {
    Metres total;
    for (const Metres& piece : pieces) total += piece;
    return total;
}

/// Equal pieces to one building together.
std::string pieces_words(const Draft& draft, const std::vector<Metres>& whole) {
    std::string words;
    for (std::size_t i = 0; i < whole.size();) {
        std::size_t same = i;
        while (same < whole.size() && whole[same] == whole[i] &&
               draft.where[same] == draft.where[i]) {
            ++same;
        }
        words += words.empty() ? "cut " : ", ";
        if (same - i > 1) words += fmt::format("{} × ", same - i);
        words += metres_words(whole[i]);
        if (!draft.where[i].empty()) words += " (" + draft.where[i] + ")";
        i = same;
    }
    return words;
}

/// Of more pieces than that only their sum is told.
constexpr std::size_t most_pieces = 8;

std::string cut_words(const tables::Ware& ware, const Draft& draft) {
    std::vector<Metres> whole;
    for (const Metres& piece : draft.pieces) whole.push_back(whole_metres(piece));
    if (whole.empty()) return "";
    if (draft.bought == Bought::reel) {
        return drums_words(drums_for(ware.sold, "cable", whole), "reel");
    }
    const std::string pieces =
        whole.size() > most_pieces
            ? fmt::format("cut {} pieces, {} together", whole.size(), metres_words(total_of(whole)))
            : pieces_words(draft, whole);
    return pieces + "; or " + drums_words(drums_for(ware.sold, "cable", whole), "drum");
}

std::string sand_words(const tables::Ware& ware, const Draft& draft) {
    const Drums rolls = coils_for(ware.sold, "tape", metres(draft.row.quantity));
    const std::string tape = fmt::format(
        "tape {} m of a roll of {}", significant(draft.row.quantity, 3), metres_words(rolls.sold));
    if (!(draft.tonnes > 0)) return tape;
    return fmt::format("about {} t of sand; {}", significant(draft.tonnes, 2), tape);
}

}  // namespace

std::string order_words(const tables::Ware& ware, const Draft& draft) {
    switch (draft.bought) {
        case Bought::cut:
        case Bought::reel:
            return cut_words(ware, draft);
        case Bought::coupled:
            return drums_words(coils_for(ware.sold, "duct", metres(draft.row.quantity)), "coil");
        case Bought::fixed:
            return draft.count > 0 ? fmt::format("about {}", draft.count) : "";
        case Bought::sand:
            return sand_words(ware, draft);
        case Bought::as_counted:
            break;
    }
    return "";
}

}  // namespace toft::ware
