#include "price/item.h"

#include <array>

namespace toft::price {

namespace {

using S = Sort;
constexpr bool bought = true;
constexpr bool not_bought = false;

constexpr std::array<ItemFacts, item_count> table{{
    {"gland pair small", "pair", S::material, bought, "ends of armoured cable up to 6 mm²"},
    {"gland pair medium", "pair", S::material, bought, "ends of armoured cable, 10 and 16 mm²"},
    {"gland pair large", "pair", S::material, bought, "ends of armoured cable from 25 mm²"},
    {"insulated gland kit", "each", S::material, bought,
     "keeps the house's earth out of a building with its own electrode"},
    {"switch-fuse", "each", S::material, bought, "takes a fuse or moulded breaker on the tails"},
    {"breaker over 40 A extra", "each", S::material, bought, "added to a breaker above 40 A"},
    {"new board", "each", S::material, bought, "beside the old one at the house"},
    {"connector blocks and tails", "set", S::material, bought, "joining in at the tails"},
    {"delayed RCD", "each", S::material, bought, "at the head of the run"},
    {"outbuilding board", "each", S::material, bought, "the building's own board"},
    {"30 mA RCBO", "each", S::material, bought, "one for each circuit of the building"},
    {"rod", "each", S::material, bought, "one piece of an earth rod"},
    {"rod connection and pit", "each", S::material, bought, "one for each electrode"},
    {"bond per connection", "each", S::material, bought, "clamp and label on a metal part"},
    {"house bonding upgrade", "job", S::service, bought, "put right at the house first"},
    {"earthing conductor upgrade", "job", S::service, bought, "put right at the house first"},
    {"trench lawn", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench bed", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench path", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench drive", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench patio", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench field", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench shared path", "m", S::service, bought, "dug, filled, surface made good"},
    {"trench road", "m", S::service, bought, "dug, filled, surface made good"},
    {"sand and tape", "m", S::material, bought, "bed and warning tape of a trench"},
    {"duct", "m", S::material, bought, "around buried cable"},
    {"clips", "m", S::material, bought, "cable on a wall"},
    {"tray", "m", S::material, bought, "cable on tray"},
    {"labour hour", "h", S::labour, bought, "every hour of work"},
    {"hours gland pair small", "h", S::labour, not_bought, "labour on a pair of glands"},
    {"hours gland pair medium", "h", S::labour, not_bought, "labour on a pair of glands"},
    {"hours gland pair large", "h", S::labour, not_bought, "labour on a pair of glands"},
    {"hours per m clipped", "h", S::labour, not_bought, "laying a metre of cable on a surface"},
    {"hours per m pulled", "h", S::labour, not_bought, "laying a metre of cable in the ground"},
    {"hours board", "h", S::labour, not_bought, "labour on the building's board"},
    {"hours house end", "h", S::labour, not_bought, "labour at the house end"},
    {"hours rod", "h", S::labour, not_bought, "driving one piece of rod"},
    {"hours bond", "h", S::labour, not_bought, "labour on one bond"},
    {"test and paper", "job", S::service, bought, "tests, certificate, notification"},
    {"VAT percent", "%", S::service, not_bought, "tax on the whole price"},
    {"allowance percent", "%", S::material, not_bought, "extra length of cable bought"},
    {"tail m", "m", S::material, not_bought, "cable left at each end"},
    {"isolator", "each", S::material, bought, "in the tails, where none is"},
    {"switch-fuse three-pole", "each", S::material, bought, "the same for three phases"},
    {"three-phase board extra", "each", S::material, bought, "over a single-phase board"},
    {"four-pole RCD extra", "each", S::material, bought, "over a two-pole one"},
    {"three-pole device over one pole", "factor", S::material, not_bought,
     "price of a three-pole device over one pole"},
    {"joint box", "each", S::material, bought, "where the cable changes"},
    {"hours joint box", "h", S::labour, not_bought, "labour on a joint box"},
    {"conduit", "m", S::material, bought, "cable in conduit"},
    {"trunking", "m", S::material, bought, "cable in trunking"},
    {"catenary wire", "m", S::material, bought, "cable overhead"},
    {"plastic section in a pipe", "job", S::service, bought, "a change that toft levers weighs"},
    {"moving a tap", "job", S::service, bought, "a change that toft levers weighs"},
    {"soft starter", "each", S::service, bought, "a change that toft levers weighs; fitted"},
    {"load management unit", "each", S::service, bought,
     "a change that toft levers weighs; fitted"},
    {"energy kWh", "kWh", S::service, not_bought, "worth of energy lost; pounds, with its tax"},
    {"years counted", "years", S::service, not_bought, "over which lost energy is counted"},
    {"interest percent", "per cent", S::service, not_bought, "above inflation, on lost energy"},
    {"test of an existing cable", "job", S::service, bought, "where a cable that is there stays"},
    {"hours taking an old cable off", "h", S::labour, not_bought, "where a cable is given up"},
    {"parting two earths", "job", S::service, bought, "put right at the house first"},
    {"parting neutral and earth", "job", S::service, bought, "put right at the house first"},
    {"tracing a borrowed neutral", "job", S::service, bought, "put right at the house first"},
    {"margin percent", "%", S::service, not_bought,
     "added to every price that is bought or worked"},
}};

}  // namespace

const ItemFacts& facts_of(Item item) { return table[static_cast<std::size_t>(item)]; }

const char* item_word(Item item) { return facts_of(item).word; }

Item item_of(std::string_view word, bool& found) {
    found = false;
    if (word.empty()) return Item::labour_hour;
    for (std::size_t i = 0; i < item_count; ++i) {
        if (table[i].word == word) {
            found = true;
            return static_cast<Item>(i);
        }
    }
    return Item::labour_hour;
}

}  // namespace toft::price
