#include "price/price.h"

#include "earthing/main_bonding.h"
#include "price/electrode.h"

namespace toft::price {

namespace {

using study::BuildingEarthing;

template <class L>
class Pricer {
public:
    Pricer(L& ledger, const Book& book, const study::Setting<Silent>& setting,
           const study::RunScheme& scheme)
        : ledger_(ledger), book_(book), s_(setting), scheme_(scheme) {}

    using Money = ValueIn<L, Pounds>;

    Money house_end() { return scheme_.head_stays ? head_that_stays() : new_head(); }

    Money new_head() {
        const auto& devices = s_.catalogue->devices;
        const auto index = static_cast<std::size_t>(scheme_.device - devices.data());
        const bool three = scheme_.phases == 3;
        Money sum = each({"p.device", "device at the head of the run"}, book_.devices[index]);
        if (three) sum = sum * book_.amount(Item::poles_factor);
        switch (scheme_.fed_from) {
            case site::FedFrom::tails:
                sum = sum +
                      item({"p.switch", "switch-fuse"},
                           three ? Item::three_pole_switch_fuse : Item::switch_fuse) +
                      blocks();
                break;
            case site::FedFrom::new_board:
                sum = sum + item({"p.newboard", "new board beside the old one"}, Item::new_board) +
                      blocks();
                if (three) sum = sum + board_extra();
                break;
            case site::FedFrom::spare_way:
                break;
        }
        if (scheme_.rcd) sum = sum + residual_device();
        sum =
            sum + labour({"p.houselabour", "labour at the house end"}, Item::hours_house_end, 1.0);
        return ledger_.let({"P.house", "house end"}, sum);
    }

    /// What feeds the cable there today costs nothing, but for a residual current device before it.
    Money head_that_stays() {
        Money sum = each({"p.stays", "the device at the head stays"}, pounds(0));
        if (scheme_.rcd) {
            sum = sum + residual_device() +
                  labour({"p.houselabour", "labour at the house end"}, Item::hours_house_end, 1.0);
        }
        return ledger_.let({"P.house", "house end"}, sum);
    }

    Money residual_device() {
        const Money device = item({"p.rcd", "delayed RCD"}, Item::delayed_rcd);
        if (scheme_.phases == 1) return device;
        return device + item({"p.rcd4", "for four poles"}, Item::four_pole_rcd_extra);
    }

    Money run() {
        Money sum = stretch(0);
        for (std::size_t i = 1; i < scheme_.stretches; ++i) {
            sum = sum + stretch(i) + item({"p.joint", "joint box", part(i)}, Item::joint_box) +
                  labour({"p.jointlabour", "labour on the joint", part(i)}, Item::hours_joint_box,
                         1.0);
        }
        if (scheme_.earthing == BuildingEarthing::own_electrode) {
            sum = sum + item({"p.insulated", "insulated gland at the far end"},
                             Item::insulated_gland_kit);
        }
        if (s_.run->existing && !scheme_.first().old()) {
            sum = sum + labour({"p.oldcable", "labour of taking the old cable off"},
                               Item::hours_old_cable_off, 1.0);
        }
        return ledger_.let({"P.run", "cable and its ends"}, sum);
    }

    Money ground() {
        Money sum = each({"p.nothing", "nothing yet"}, pounds(0));
        for (std::size_t i = 0; i < s_.legs.size(); ++i) {
            const study::Stretch& laid = scheme_.stretch[s_.legs[i].stretch];
            const int fresh = laid.old() ? laid.parallel - 1 : laid.parallel;
            const int number = static_cast<int>(i) + 1;
            const double length = s_.legs[i].length.number();
            if (fresh > 0) {
                sum = sum + leg(s_.run->legs[i], length, fresh, number);
            } else if (laid.separate) {
                sum = sum + way_for_separate(s_.run->legs[i], length, number);
            }
        }
        return ledger_.let({"P.ground", "ground and fixings"}, sum);
    }

    /// Cable of each circuit that was designed, with its fixings.
    Money circuit(const Wired& w) {
        const Name cable{"p.circuit", "cable of a circuit", w.circuit + 1};
        const auto length =
            ledger_.stated({"L.circuit", "length of its cable", w.circuit + 1}, w.length, "survey");
        const auto index = static_cast<std::size_t>(w.cable - s_.catalogue->cables.data());
        return metres_of(cable, book_.cables[index], length) +
               metres_of({"p.circuitclips", "its clips per metre", w.circuit + 1}, Item::clips,
                         w.length.number()) +
               labour({"p.circuitlay", "labour of laying it, per hour", w.circuit + 1},
                      Item::hours_per_m_clipped, w.length.number());
    }

    Money far_end(const std::vector<Wired>& circuits_laid) {
        const auto& circuits = s_.building_facts->circuits;
        const double ways = circuits.empty() ? 2.0 : static_cast<double>(circuits.size());
        Money sum = item({"p.board", "board of the building"}, Item::outbuilding_board) +
                    times({"p.rcbo", "RCBOs, one a circuit"}, Item::rcbo, ways) +
                    labour({"p.boardlabour", "labour on the board"}, Item::hours_board, 1.0);
        if (scheme_.phases == 3) sum = sum + board_extra();
        if (scheme_.earthing == BuildingEarthing::own_electrode) sum = sum + electrode();
        const double parts = extraneous_parts();
        if (parts > 0) sum = sum + bonds(parts);
        for (const Wired& w : circuits_laid) sum = sum + circuit(w);
        return ledger_.let({"P.far", "far end"}, sum);
    }

    Money test_and_paper() {
        Money sum = item({"p.paper", "tests, certificate, notification"}, Item::test_and_paper);
        if (scheme_.first().old()) {
            sum = sum + item({"p.oldtest", "test and inspection of the cable that is there"},
                             Item::test_of_existing_cable);
        }
        return ledger_.let({"P.paper", "test and paper"}, sum);
    }

    Money remedies(const std::vector<Item>& items) {
        Money sum = each({"p.nothing", "nothing yet"}, pounds(0));
        int number = 0;
        for (const Item name : items) {
            sum = sum + item({"p.remedy", "to be put right at the house first", ++number}, name);
        }
        return ledger_.let({"P.remedy", "put right at the house first"}, sum);
    }

    ValueIn<L, double> vat_share() {
        return ledger_.stated({"vat", "value added tax", 0, "%"}, book_.amount(Item::vat_percent),
                              book());
    }

private:
    const char* book() const { return book_.name.c_str(); }

    Money each(const Name& name, Pounds price) { return ledger_.stated(name, price, book()); }
    Money item(const Name& name, Item key) { return each(name, pounds(book_.amount(key))); }
    Money times(const Name& name, Item key, double count) { return item(name, key) * count; }
    /// An isolator is bought where none is in the tails.
    Money blocks() {
        const Money joined =
            item({"p.blocks", "connector blocks and tails"}, Item::connector_blocks_and_tails);
        if (s_.house.isolator) return joined;
        return joined + item({"p.isolator", "isolator in the tails"}, Item::isolator);
    }
    Money board_extra() {
        return item({"p.board3", "board for three phases"}, Item::three_phase_board_extra);
    }
    /// Hours of the item times `count`, at the price of an hour.
    Money labour(const Name& name, Item key, double count) {
        return each(name, pounds(book_.amount(Item::labour_hour))) * (book_.amount(key) * count);
    }
    Money metres_of(const Name& name, PoundsPerMetre price, const ValueIn<L, Metres>& length) {
        return ledger_.stated(name, price, book()) * length;
    }
    Money metres_of(const Name& name, Item key, double length) {
        return each(name, pounds(book_.amount(key))) * length;
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
        Money sum = fresh > 0 ? many(cable(i, bought), fresh)
                              : each({"p.there", "the cable that is there", part(i)}, pounds(0));
        if (laid.separate) sum = sum + many(separate(i, bought), laid.parallel);
        return sum;
    }

    static Money many(const Money& one, int count) {
        return count == 1 ? one : one * static_cast<double>(count);
    }

    Money separate(std::size_t i, const ValueIn<L, Metres>& bought) {
        return metres_of({"p.separate", "separate conductor", part(i)},
                         single_core(scheme_.stretch[i].separate->section), bought) +
               labour({"p.separatelabour", "labour of laying it, per hour", part(i)},
                      Item::hours_per_m_pulled, s_.stretches[i].length_most.number());
    }

    /// With the glands of armoured cable.
    Money cable(std::size_t i, const ValueIn<L, Metres>& bought) {
        const study::Stretch& laid = scheme_.stretch[i];
        const auto index = static_cast<std::size_t>(laid.cable - s_.catalogue->cables.data());
        const Money sum = metres_of({"p.cable", "cable", part(i)}, book_.cables[index], bought);
        if (!laid.armoured()) return sum;
        const int size = gland_size(laid);
        return sum +
               item({"p.glands", "pair of glands", part(i)}, from(Item::gland_pair_small, size)) +
               labour({"p.glandlabour", "labour on the glands", part(i)},
                      from(Item::hours_gland_pair_small, size), 1.0);
    }

    /// Beside a cable that stays: dug for in the ground, whether or not a duct has room; clipped
    /// elsewhere.
    Money way_for_separate(const site::Leg& leg, double length, int number) {
        if (!site::buried(leg.method)) {
            return metres_of({"p.fix", "fixings per metre", number}, Item::clips, length);
        }
        const auto surface = leg.surface.value_or(site::Surface::lawn);
        return metres_of({"p.trench", "trench per metre", number},
                         from(Item::trench_lawn, static_cast<int>(surface)), length) +
               metres_of({"p.bed", "sand and tape per metre", number}, Item::sand_and_tape, length);
    }

    /// Price of single-core conductor of that section or the next that is priced.
    PoundsPerMetre single_core(SquareMillimetres section) const {
        const auto& sold = s_.catalogue->separates;
        std::size_t i = 0;
        while (i + 1 < sold.size() && sold[i].section < section) ++i;
        return book_.separates[i];
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

    /// Fixings, duct and labour go with each of the `cables` side by side, the trench with none.
    Money leg(const site::Leg& leg, double length, int cables, int number) {
        const Name laying{"p.lay", "labour of laying, per metre hour", number};
        const double each_way = length * cables;
        if (!site::buried(leg.method)) {
            return metres_of({"p.fix", "fixings per metre", number}, fixing(leg.method), each_way) +
                   labour(laying, Item::hours_per_m_clipped, each_way);
        }
        const auto surface = leg.surface.value_or(site::Surface::lawn);
        const bool duct = leg.method == site::LegMethod::buried_in_duct;
        // In a trench that is dug for another run there is nothing left to dig, bed or cover.
        const double dug = leg.dug_for.empty() ? length : 0;
        return metres_of({"p.trench", "trench per metre that is dug for this run", number},
                         from(Item::trench_lawn, static_cast<int>(surface)), dug) +
               metres_of({"p.bed", "sand and tape per metre", number}, Item::sand_and_tape, dug) +
               metres_of({"p.duct", "duct per metre", number}, Item::duct, duct ? each_way : 0) +
               labour(laying, Item::hours_per_m_pulled, each_way);
    }

    Money electrode() {
        const site::Electrode& e = s_.building_facts->electrode;
        const tables::Limits& usual = s_.catalogue->limits;
        const double rods = e.rods.known ? e.rods.low : 1;
        const Metres length = e.length.known ? e.length.low : usual.rod_length.value;
        return electrode_price(ledger_, book_, rods * rod_pieces(length, usual.rod_section.value));
    }

    double extraneous_parts() const {
        double parts = 0;
        for (const study::MetalPart& part : s_.building.parts) parts += part.extraneous;
        return parts;
    }

    Money bonds(double parts) {
        const Metres wire = s_.catalogue->limits.bond_run.value * parts;
        return times({"p.bond", "bonding clamps and labels"}, Item::bond_per_connection, parts) +
               metres_of({"p.bondwire", "bonding conductor per metre"},
                         single_core(study::local_bond(s_, scheme_.earthing)),
                         ledger_.stated({"L.bond", "bonding conductor in the building"}, wire,
                                        "a few metres to each part")) +
               labour({"p.bondlabour", "labour on the bonds"}, Item::hours_bond, parts);
    }

    L& ledger_;
    const Book& book_;
    const study::Setting<Silent>& s_;
    const study::RunScheme& scheme_;
};

}  // namespace

namespace {

template <class L>
void add_up_in(L& ledger, const ValueIn<L, double>& vat_percent, Price<L>& p) {
    p.net = ledger.let({"P.net", "price without tax"},
                       p.house_end + p.run + p.ground + p.far_end + p.test_and_paper + p.remedies);
    p.vat = ledger.let({"P.vat", "tax"}, p.net * (vat_percent / 100.0));
    p.total = ledger.let({"P", "price with tax"}, p.net + p.vat);
}

}  // namespace

void add_up(Price<Silent>& price, const Book& book) {
    Silent silent;
    add_up_in(silent, book.amount(Item::vat_percent), price);
}

template <class L>
Price<L> price_of(L& ledger, const Book& book, const study::Setting<Silent>& setting,
                  const study::RunScheme& scheme, const Extras& extras) {
    Pricer<L> pricer(ledger, book, setting, scheme);
    Price<L> p;
    p.house_end = pricer.house_end();
    p.run = pricer.run();
    p.ground = pricer.ground();
    p.far_end = pricer.far_end(extras.circuits);
    p.test_and_paper = pricer.test_and_paper();
    p.remedies = pricer.remedies(extras.remedies);
    add_up_in(ledger, pricer.vat_share(), p);
    return p;
}

template Price<Silent> price_of(Silent&, const Book&, const study::Setting<Silent>&,
                                const study::RunScheme&, const Extras&);
template Price<Recording> price_of(Recording&, const Book&, const study::Setting<Silent>&,
                                   const study::RunScheme&, const Extras&);

}  // namespace toft::price
