#pragma once
// The items every price book must price, besides cables and devices. Each has a word in the book,
// a unit, and something it is used for.

#include <cstddef>
#include <string_view>

namespace toft::price {

enum class Item {
    gland_pair_small,
    gland_pair_medium,
    gland_pair_large,
    insulated_gland_kit,
    switch_fuse,
    breaker_over_40_a_extra,
    new_board,
    connector_blocks_and_tails,
    delayed_rcd,
    outbuilding_board,
    rcbo,
    rod,
    rod_connection_and_pit,
    bond_per_connection,
    house_bonding_upgrade,
    earthing_conductor_upgrade,
    trench_lawn,
    trench_bed,
    trench_path,
    trench_drive,
    trench_patio,
    trench_field,
    trench_shared_path,
    trench_road,
    sand_and_tape,
    duct,
    clips,
    tray,
    labour_hour,
    hours_gland_pair_small,
    hours_gland_pair_medium,
    hours_gland_pair_large,
    hours_per_m_clipped,
    hours_per_m_pulled,
    hours_board,
    hours_house_end,
    hours_rod,
    hours_bond,
    test_and_paper,
    vat_percent,
    allowance_percent,
    tail_m,
    isolator,
    three_pole_switch_fuse,
    three_phase_board_extra,
    four_pole_rcd_extra,
    poles_factor,
    joint_box,
    hours_joint_box,
    conduit,
    trunking,
    catenary,
    plastic_section,
    moving_tap,
    soft_starter,
    load_management,
    energy_kwh,
    years_counted,
    interest_percent,
    test_of_existing_cable,
    hours_old_cable_off,
    parting_two_earths,
    parting_neutral_and_earth,
    tracing_a_borrowed_neutral,
    margin_percent
};

inline constexpr std::size_t item_count = 65;

/// What is paid for: a thing, an hour's work, a job done for a sum.
enum class Sort { material, labour, service };

struct ItemFacts {
    const char* word;  ///< in the book
    const char* unit;  ///< m, each, h, pair, set, job, %, …
    Sort sort;         ///< of what is bought
    bool bought;       ///< pounds for each unit; else a quantity: hours, metres, per cent
    const char* use;   ///< what toft uses it for
};

const ItemFacts& facts_of(Item item);

/// The item's word in the book.
const char* item_word(Item item);

/// The item of that word; `found` says whether there is one.
Item item_of(std::string_view word, bool& found);

}  // namespace toft::price
