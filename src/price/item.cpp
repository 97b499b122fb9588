#include "price/item.h"

#include <array>

namespace toft::price {

namespace {

constexpr std::array<const char*, item_count> item_words{"gland pair small",
                                                         "gland pair medium",
                                                         "gland pair large",
                                                         "insulated gland kit",
                                                         "switch-fuse",
                                                         "breaker over 40 A extra",
                                                         "new board",
                                                         "connector blocks and tails",
                                                         "delayed RCD",
                                                         "outbuilding board",
                                                         "30 mA RCBO",
                                                         "rod",
                                                         "rod connection and pit",
                                                         "bond per connection",
                                                         "house bonding upgrade",
                                                         "earthing conductor upgrade",
                                                         "trench lawn",
                                                         "trench bed",
                                                         "trench path",
                                                         "trench drive",
                                                         "trench patio",
                                                         "trench field",
                                                         "trench shared path",
                                                         "trench road",
                                                         "sand and tape",
                                                         "duct",
                                                         "clips",
                                                         "tray",
                                                         "labour hour",
                                                         "hours gland pair small",
                                                         "hours gland pair medium",
                                                         "hours gland pair large",
                                                         "hours per m clipped",
                                                         "hours per m pulled",
                                                         "hours board",
                                                         "hours house end",
                                                         "hours rod",
                                                         "hours bond",
                                                         "test and paper",
                                                         "VAT percent",
                                                         "allowance percent",
                                                         "tail m",
                                                         "isolator",
                                                         "switch-fuse three-pole",
                                                         "three-phase board extra",
                                                         "four-pole RCD extra",
                                                         "three-pole device over one pole",
                                                         "joint box",
                                                         "hours joint box",
                                                         "conduit",
                                                         "trunking",
                                                         "catenary wire",
                                                         "plastic section in a pipe",
                                                         "moving a tap",
                                                         "soft starter",
                                                         "load management unit",
                                                         "energy kWh",
                                                         "years counted",
                                                         "interest percent",
                                                         "test of an existing cable",
                                                         "hours taking an old cable off",
                                                         "parting two earths",
                                                         "parting neutral and earth",
                                                         "tracing a borrowed neutral"};

}  // namespace

const char* item_word(Item item) { return item_words[static_cast<std::size_t>(item)]; }

Item item_of(std::string_view word, bool& found) {
    found = false;
    if (word.empty()) return Item::labour_hour;
    for (std::size_t i = 0; i < item_count; ++i) {
        if (item_words[i] == word) {
            found = true;
            return static_cast<Item>(i);
        }
    }
    return Item::labour_hour;
}

}  // namespace toft::price
