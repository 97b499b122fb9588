#pragma once
// A scheme's price part by part, from lines. Template of this folder's own .cpp files.

#include "earthing/main_bonding.h"
#include "price/electrode.h"
#include "price/lines.h"
#include "price/price.h"

namespace toft::price {

template <class L, class S>
class Pricer {
public:
    Pricer(L& ledger, const Book& book, const study::Setting<Silent>& setting,
           const study::RunScheme& scheme, S& sink)
        : ledger_(ledger), book_(book), s_(setting), scheme_(scheme), lines_(ledger, book, sink) {}

    using Money = ValueIn<L, Pounds>;

    Money house_end() {
        lines_.begin(Part::house_end);
        const Money sum = scheme_.head_stays ? head_that_stays() : new_head();
        return ledger_.let({"P.house", "house end"}, without_dust(sum));
    }

    Money run() {
        lines_.begin(Part::run);
        Money sum = stretch(0);
        for (std::size_t i = 1; i < scheme_.stretches; ++i) {
            sum = sum + stretch(i) +
                  lines_.one({"p.joint", "joint box", part(i)}, Item::joint_box) +
                  lines_.labour({"h.joint", "hours on the joint", part(i), "h"},
                                "labour on the joint", Item::hours_joint_box);
        }
        if (scheme_.earthing == study::BuildingEarthing::own_electrode) {
            sum = sum + lines_.one({"p.insulated", "insulated gland at the far end"},
                                   Item::insulated_gland_kit);
        }
        if (s_.run->existing && !scheme_.first().old()) {
            sum = sum + lines_.labour({"h.oldcable", "hours of taking the old cable off", 0, "h"},
                                      "labour of taking the old cable off",
                                      Item::hours_old_cable_off);
        }
        return ledger_.let({"P.run", "cable and its ends"}, without_dust(sum));
    }

    Money ground() {
        lines_.begin(Part::ground);
        Money sum = nothing();
        for (std::size_t i = 0; i < s_.legs.size(); ++i) {
            const study::Stretch& laid = scheme_.stretch[s_.legs[i].stretch];
            const int fresh = laid.old() ? laid.parallel - 1 : laid.parallel;
            if (fresh > 0) {
                sum = sum + leg(i, fresh);
            } else if (laid.separate) {
                sum = sum + way_for_separate(i);
            }
        }
        return ledger_.let({"P.ground", "ground and fixings"}, without_dust(sum));
    }

    Money far_end(const std::vector<Wired>& circuits_laid) {
        lines_.begin(Part::far_end);
        const auto& circuits = s_.building_facts->circuits;
        const double ways = circuits.empty() ? 2.0 : static_cast<double>(circuits.size());
        Money sum = lines_.one({"p.board", "board of the building"}, Item::outbuilding_board) +
                    lines_.some({"p.rcbo", "RCBOs, one a circuit"}, Item::rcbo, ways) +
                    lines_.labour({"h.board", "hours on the board", 0, "h"}, "labour on the board",
                                  Item::hours_board);
        if (scheme_.phases == 3) sum = sum + board_extra();
        if (scheme_.earthing == study::BuildingEarthing::own_electrode) sum = sum + electrode();
        const double extraneous = extraneous_parts();
        if (extraneous > 0) sum = sum + bonds(extraneous);
        for (const Wired& w : circuits_laid) sum = sum + circuit(w);
        return ledger_.let({"P.far", "far end"}, without_dust(sum));
    }

    Money test_and_paper() {
        lines_.begin(Part::test_and_paper);
        Money sum =
            lines_.one({"p.paper", "tests, certificate, notification"}, Item::test_and_paper);
        if (scheme_.first().old()) {
            sum = sum + lines_.one({"p.oldtest", "test and inspection of the cable that is there"},
                                   Item::test_of_existing_cable);
        }
        return ledger_.let({"P.paper", "test and paper"}, without_dust(sum));
    }

    Money remedies(const std::vector<Item>& items) {
        lines_.begin(Part::remedies);
        Money sum = nothing();
        int number = 0;
        for (const Item name : items) {
            sum = sum +
                  lines_.one({"p.remedy", "to be put right at the house first", ++number}, name);
        }
        return ledger_.let({"P.remedy", "put right at the house first"}, without_dust(sum));
    }

    ValueIn<L, double> vat_share() {
        return ledger_.stated({"vat", "value added tax", 0, "%"}, book_.amount(Item::vat_percent),
                              book_.name.c_str());
    }

private:
    using Number = ValueIn<L, double>;

    Money nothing() { return lines_.nothing({"p.nothing", "nothing yet"}); }

    Money new_head() {
        Money sum = device();
        const bool three = scheme_.phases == 3;
        switch (scheme_.fed_from) {
            case site::FedFrom::tails:
                sum = sum +
                      lines_.one({"p.switch", "switch-fuse"},
                                 three ? Item::three_pole_switch_fuse : Item::switch_fuse) +
                      blocks();
                break;
            case site::FedFrom::new_board:
                sum = sum +
                      lines_.one({"p.newboard", "new board beside the old one"}, Item::new_board) +
                      blocks();
                if (three) sum = sum + board_extra();
                break;
            case site::FedFrom::spare_way:
                break;
        }
        if (scheme_.rcd) sum = sum + residual_device();
        return sum + labour_at_house();
    }

    /// What feeds the cable there today costs nothing, but for a residual current device before it.
    Money head_that_stays() {
        const Money stays = lines_.nothing({"p.stays", "the device at the head stays"});
        if (!scheme_.rcd) return stays;
        return stays + residual_device() + labour_at_house();
    }

    Money device() {
        const auto index = static_cast<std::size_t>(scheme_.device - s_.catalogue->devices.data());
        const Name name{"p.device", "device at the head of the run"};
        const Name large{"p.large", "more for a breaker above 40 A"};
        const Money one = pole(name, BookRow::device(index));
        if (!over_40_a(*scheme_.device)) return one;
        return one + pole(large, BookRow::item(Item::breaker_over_40_a_extra));
    }

    /// Priced by the pole; three poles go by a factor of the book's.
    Money pole(const Name& name, const BookRow& row) {
        if (scheme_.phases != 3) return lines_.one(name, row);
        return lines_.some(name, row,
                           ledger_.stated({"poles", "three-pole device over one pole"},
                                          book_.amount(Item::poles_factor), book_.name.c_str()));
    }

    Money labour_at_house() {
        return lines_.labour({"h.house", "hours at the house end", 0, "h"},
                             "labour at the house end", Item::hours_house_end);
    }

    Money residual_device() {
        const Money rcd = lines_.one({"p.rcd", "delayed RCD"}, Item::delayed_rcd);
        if (scheme_.phases == 1) return rcd;
        return rcd + lines_.one({"p.rcd4", "for four poles"}, Item::four_pole_rcd_extra);
    }

    /// An isolator is bought where none is in the tails.
    Money blocks() {
        const Money joined = lines_.one({"p.blocks", "connector blocks and tails"},
                                        Item::connector_blocks_and_tails);
        if (s_.house.isolator) return joined;
        return joined + lines_.one({"p.isolator", "isolator in the tails"}, Item::isolator);
    }

    Money board_extra() {
        return lines_.one({"p.board3", "board for three phases"}, Item::three_phase_board_extra);
    }

    /// Cable of each circuit that was designed, with its fixings.
    Money circuit(const Wired& w) {
        const int number = w.circuit + 1;
        const Number length = ledger_.stated({"L.circuit", "length of its cable", number, "m"},
                                             w.length.number(), "survey");
        const auto index = static_cast<std::size_t>(w.cable - s_.catalogue->cables.data());
        return lines_.some({"p.circuit", "cable of a circuit, by the metre", number},
                           BookRow::cable(index), length) +
               lines_.some({"p.circuitclips", "clips for a circuit's cable", number}, Item::clips,
                           length) +
               lines_.labour({"h.circuit", "hours of laying a metre of it", number, "h/m"},
                             "labour of laying a circuit's cable", Item::hours_per_m_clipped,
                             length);
    }

    int part(std::size_t i) const { return scheme_.stretches == 1 ? 0 : static_cast<int>(i) + 1; }

    ValueIn<L, Metres> bought_length(std::size_t i) {
        const auto length = ledger_.stated({"L.run", "length to be covered", part(i)},
                                           s_.stretches[i].length_most, "survey");
        const double allowance = 1.0 + book_.amount(Item::allowance_percent) / 100;
        const double tails = 2 * book_.amount(Item::tail_m);
        return ledger_.let({"L.bought", "cable to buy, with tails and allowance", part(i)},
                           (length + metres(tails)) * allowance);
    }

    /// One stretch: its cable, what lies beside it, the glands of armoured cable.
    Money stretch(std::size_t i) {
        const study::Stretch& laid = scheme_.stretch[i];
        const auto bought = bought_length(i);
        const int fresh = laid.old() ? laid.parallel - 1 : laid.parallel;
        Money sum = fresh > 0 ? cable(i, bought, fresh)
                              : lines_.nothing({"p.there", "the cable that is there", part(i)});
        if (laid.separate) sum = sum + separate(i, bought);
        return sum;
    }

    template <class T>
    static T many(const T& one, int count) {
        return count == 1 ? one : one * static_cast<double>(count);
    }

    Money separate(std::size_t i, const ValueIn<L, Metres>& bought) {
        const study::Stretch& laid = scheme_.stretch[i];
        const Number length =
            ledger_.stated({"L.beside", "length of the separate conductor", part(i), "m"},
                           s_.stretches[i].length_most.number(), "survey");
        return lines_.cut({"p.separate", "separate conductor", part(i)},
                          single_core(laid.separate->section), many(bought, laid.parallel)) +
               lines_.labour({"h.separate", "hours of laying a metre of it", part(i), "h/m"},
                             "labour of laying the separate conductor", Item::hours_per_m_pulled,
                             many(length, laid.parallel));
    }

    /// With the glands of armoured cable.
    Money cable(std::size_t i, const ValueIn<L, Metres>& bought, int count) {
        const study::Stretch& laid = scheme_.stretch[i];
        const auto index = static_cast<std::size_t>(laid.cable - s_.catalogue->cables.data());
        const Money sum =
            lines_.cut({"p.cable", "cable", part(i)}, BookRow::cable(index), many(bought, count));
        if (!laid.armoured()) return sum;
        const int size = gland_size(laid);
        const double pairs = count;
        return sum +
               lines_.some({"p.glands", "pair of glands", part(i)},
                           from(Item::gland_pair_small, size), pairs) +
               lines_.labour({"h.glands", "hours on a pair of glands", part(i), "h"},
                             "labour on the glands", from(Item::hours_gland_pair_small, size),
                             pairs);
    }

    Number leg_length(std::size_t i) {
        return ledger_.stated({"L.leg", "length of the leg", leg_number(i), "m"},
                              s_.legs[i].length.number(), "survey");
    }
    static int leg_number(std::size_t i) { return static_cast<int>(i) + 1; }

    Money trench(std::size_t i, const Number& length) {
        const auto surface = s_.run->legs[i].surface.value_or(site::Surface::lawn);
        const int number = leg_number(i);
        return lines_.some({"p.trench", "trench that is dug for this run", number},
                           from(Item::trench_lawn, static_cast<int>(surface)), length) +
               lines_.some({"p.bed", "sand and tape", number}, Item::sand_and_tape, length);
    }

    Money fixings(std::size_t i, Item item, const Number& length) {
        return lines_.some({"p.fix", "fixings", leg_number(i)}, item, length);
    }

    /// Beside a cable that stays: dug for in the ground, whether or not a duct has room; clipped
    /// elsewhere.
    Money way_for_separate(std::size_t i) {
        const Number length = leg_length(i);
        if (!site::buried(s_.run->legs[i].method)) return fixings(i, Item::clips, length);
        return trench(i, length);
    }

    /// Fixings, duct and labour go with each of the `cables` side by side, the trench with none.
    Money leg(std::size_t i, int cables) {
        const site::Leg& leg = s_.run->legs[i];
        const Number length = leg_length(i);
        const Number each_way = many(length, cables);
        const Name hours{"h.lay", "hours of laying a metre", leg_number(i), "h/m"};
        const char* laying = "labour of laying the cable";
        if (!site::buried(leg.method)) {
            return fixings(i, fixing(leg.method), each_way) +
                   lines_.labour(hours, laying, Item::hours_per_m_clipped, each_way);
        }
        Money sum = lines_.labour(hours, laying, Item::hours_per_m_pulled, each_way);
        // In a trench that is dug for another run there is nothing left to dig, bed or cover.
        if (leg.dug_for.empty()) sum = trench(i, length) + sum;
        if (leg.method != site::LegMethod::buried_in_duct) return sum;
        return sum + lines_.some({"p.duct", "duct", leg_number(i)}, Item::duct, each_way);
    }

    /// Single-core conductor of that section or the next that is priced.
    BookRow single_core(SquareMillimetres section) const {
        const auto& sold = s_.catalogue->separates;
        std::size_t i = 0;
        while (i + 1 < sold.size() && sold[i].section < section) ++i;
        return BookRow::separate(i);
    }

    /// The item that stands `steps` after `first`.
    static Item from(Item first, int steps) {
        return static_cast<Item>(static_cast<int>(first) + steps);
    }

    static int gland_size(const study::Stretch& laid) {
        const double section = laid.cable->section.number();
        return section <= 6 ? 0 : section <= 16 ? 1 : 2;
    }

    static Item fixing(site::LegMethod method) {
        switch (method) {
            case site::LegMethod::tray:
                return Item::tray;
            case site::LegMethod::in_conduit:
                return Item::conduit;
            case site::LegMethod::in_trunking:
                return Item::trunking;
            case site::LegMethod::overhead:
                return Item::catenary;
            default:
                return Item::clips;
        }
    }

    Money electrode() {
        const site::Electrode& e = s_.building_facts->electrode;
        const tables::Limits& usual = s_.catalogue->limits;
        const double rods = e.rods.known ? e.rods.low : 1;
        const Metres length = e.length.known ? e.length.low : usual.rod_length.value;
        return electrode_lines(lines_, rods * rod_pieces(length, usual.rod_section.value));
    }

    double extraneous_parts() const {
        double count = 0;
        for (const study::MetalPart& metal : s_.building.parts) count += metal.extraneous;
        return count;
    }

    Money bonds(double count) {
        const Metres wire = s_.catalogue->limits.bond_run.value * count;
        return lines_.some({"p.bond", "bonding clamps and labels"}, Item::bond_per_connection,
                           count) +
               lines_.cut({"p.bondwire", "bonding conductor"},
                          single_core(study::local_bond(s_, scheme_.earthing)),
                          ledger_.stated({"L.bond", "bonding conductor in the building"}, wire,
                                         "a few metres to each part")) +
               lines_.labour({"h.bond", "hours on a bond", 0, "h"}, "labour on the bonds",
                             Item::hours_bond, count);
    }

    L& ledger_;
    const Book& book_;
    const study::Setting<Silent>& s_;
    const study::RunScheme& scheme_;
    Lines<L, S> lines_;
};

}  // namespace toft::price
