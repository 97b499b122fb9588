#include "ware/draft.h"

#include "base/text.h"
#include "ware/at_run.h"
#include "ware/board_row.h"
#include "ware/cable_of.h"
#include "ware/device_rows.h"
#include "ware/fixing.h"
#include "ware/gland.h"
#include "ware/ground_rows.h"
#include "ware/pence.h"
#include "ware/place.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace toft::ware {

namespace {

using answer::StretchAnswer;
using price::BillLine;

bool begins(const std::string& text, const char* with) { return text.rfind(with, 0) == 0; }

/// What is priced on top of something else and is no thing of its own: item, and what it goes with.
constexpr std::pair<const char*, const char*> surcharges[] = {
    {"breaker over 40 A extra", "device"},
    {"three-phase board extra", "board"},
    {"four-pole RCD extra", "delayed RCD"},
};

Group group_of(price::Part part) {
    switch (part) {
        case price::Part::house_end:
            return Group::near_end;
        case price::Part::run:
            return Group::run;
        case price::Part::ground:
            return Group::ground;
        case price::Part::far_end:
            return Group::far_end;
        case price::Part::remedies:
            return Group::put_right;
        case price::Part::test_and_paper:
            break;
    }
    return Group::other;
}

class Drafter {
public:
    Drafter(const tables::Catalogue& catalogue, const site::Job& job, const RunBill& part)
        : c_(catalogue), job_(job), part_(part), at_(catalogue, part) {}

    std::vector<Draft> all() {
        for (const BillLine& line : part_.bill) {
            if (line.sort == price::Sort::material) add(line);
        }
        return std::move(drafts_);
    }

private:
    void add(const BillLine& line) {
        const std::string& item = line.item;
        if (surcharge(line)) return;
        if (begins(item, "cable ")) return put(cable(line), item);
        if (begins(item, "separate ")) return put(single(line), item);
        if (begins(item, "gland pair")) return put(gland(line), item);
        if (item == "duct") return duct(line);
        if (item == "clips") return put(clips(line), item);
        if (item == "sand and tape")
            return put(sand_row(named(line), c_, across_at(c_, at_, line.number)), item);
        if (item == circuit_item) return residual(line);
        if (is_device(item)) return put(head_row(part_, line), "device");
        if (item == "outbuilding board") return put(board_row(named(line), part_), "board");
        put(both_ways(named(line), item), item == "new board" ? "board" : item);
    }

    void put(Draft draft, const std::string& as) {
        drafts_.push_back(std::move(draft));
        hosts_.push_back(as);
    }

    Draft plain(const BillLine& line) const {
        Draft draft;
        Row& row = draft.row;
        row.group = group_of(line.part);
        row.quantity = line.quantity;
        row.unit = line.unit;
        row.each = line.each;
        row.amount = line.amount;
        row.lines = 1;
        return draft;
    }

    /// By the words of the tables; what they lack goes by its name in the book.
    Draft named(const BillLine& line) const {
        Draft draft = plain(line);
        for (const tables::ItemRow& known : c_.ware.items) {
            if (known.item != line.item) continue;
            draft.row.what = known.what;
            draft.row.note = known.citation->note;
            draft.row.size = size_of(line);
            return draft;
        }
        draft.row.what = line.item;
        draft.row.note = line.says;
        return draft;
    }

    /// What tables or answer know of the size of such an item; empty where nothing.
    std::string size_of(const BillLine& line) const {
        const std::string& item = line.item;
        if (item == "rod") {
            return significant(c_.limits.rod_section.value.number(), 3) + " m";
        }
        if (item == "sand and tape") return "tape " + mm_words(c_.trench.sizes.tape_width.value);
        if (item == "insulated gland kit") return last_thickness();
        if (item == "delayed RCD" && part_.scheme.run.rcd) {
            const answer::RcdAnswer& rcd = *part_.scheme.run.rcd;
            return fmt::format("{} mA{}", significant(rcd.sensitivity_ma, 3),
                               rcd.type.empty() ? "" : " type " + rcd.type);
        }
        return line.part == price::Part::ground ? at_.thickness_words(line.number) : "";
    }

    std::string last_thickness() const {
        const auto& stretches = part_.scheme.run.stretches;
        return stretches.empty() ? "" : at_.thickness_words(stretches.back().last_leg);
    }

    /// A residual current device that solar or batteries feed back through.
    Draft both_ways(Draft draft, const std::string& item) const {
        if (item != "delayed RCD" || !part_.behind.gives) return draft;
        draft.row.note += draft.row.note.empty() ? "" : "; ";
        draft.row.note += back_fed_words;
        return draft;
    }

    /// Money on top of the last row that it goes with; false where there is none in the same part.
    bool surcharge(const BillLine& line) {
        for (const auto& [item, host] : surcharges) {
            if (line.item != item) continue;
            for (std::size_t i = drafts_.size(); i-- > 0;) {
                Row& row = drafts_[i].row;
                if (hosts_[i] != host || row.group != group_of(line.part)) continue;
                *row.amount += line.amount;
                row.each = shared_out(*row.amount, row.quantity);
                row.lines += 1;
                if (line.item != surcharges[0].first) row.what += ", " + extra_words(line.item);
                return true;
            }
        }
        return false;
    }

    static std::string extra_words(const std::string& item) {
        return begins(item, "three-phase") ? "for three phases and neutral" : "four poles";
    }

    /// The line's metres in so many equal pieces.
    void cut(Draft& draft, double quantity, int count) const {
        draft.bought = Bought::cut;
        for (int i = 0; i < count; ++i) {
            draft.pieces.push_back(metres(quantity / count));
            draft.where.push_back(part_.scheme.building.name);
        }
    }

    Draft cable(const BillLine& line) const {
        Draft draft = plain(line);
        const bool of_circuit = line.part == price::Part::far_end;
        const StretchAnswer* stretch = of_circuit ? nullptr : at_.stretch(line.number);
        cut(draft, line.quantity, stretch ? std::max(1, bought_of(*stretch)) : 1);
        if (of_circuit) {
            draft.row.group = Group::circuits;
            draft.bought = Bought::reel;
            draft.row.note = "lengths as stated, nothing for waste";
        }
        const tables::Cable* cable = cable_of_item(c_, line.item);
        if (!cable) {
            draft.row.what = line.item;
            return draft;
        }
        draft.row.what = cable_words(c_, *cable);
        draft.row.size = size_words(*cable);
        if (of_circuit) return draft;
        draft.row.note = cable->overall.value > metres(0)
                             ? mm_words(cable->overall.value) + " over all; "
                             : std::string();
        draft.row.note += "bend no tighter than " + bend_words(c_, *cable);
        return draft;
    }

    Draft single(const BillLine& line) const {
        Draft draft = plain(line);
        const double section = std::strtod(line.item.c_str() + sizeof("separate"), nullptr);
        draft.row.what = "single-core copper cable, PVC, green-and-yellow";
        draft.row.size = significant(section, 4) + " mm²";
        const bool bond = line.part == price::Part::far_end;
        const StretchAnswer* stretch = bond ? nullptr : at_.stretch(line.number);
        cut(draft, line.quantity, stretch ? std::max(1, stretch->parallel) : 1);
        draft.row.note =
            bond ? "bonding conductors" : "beside the run; sheathed where it lies in the ground";
        return draft;
    }

    Draft gland(const BillLine& line) const {
        Draft draft = plain(line);
        draft.row.what = "gland kit for armoured cable";
        draft.row.size = "by the cable in hand";
        const StretchAnswer* stretch = at_.stretch(line.number);
        const tables::Cable* cable = at_.cable(stretch);
        if (!cable) return draft;
        const auto place = gland_place(job_, part_.run, *stretch);
        const GlandChoice choice = gland_for(c_, *cable, place);
        draft.row.what = fmt::format("gland kit type {} for armoured cable", choice.type->type);
        if (choice.row) draft.row.size = "size " + choice.row->size;
        draft.row.note =
            fmt::format("{}; {}; a kit is two glands with locknuts, earth tags, shrouds",
                        choice.why, choice.type->seals);
        return draft;
    }

    void duct(const BillLine& line) {
        put(duct_row(plain(line), c_, at_.pulled_in(line.number)), line.item);
        put(cord_row(plain(line)), "cord");
    }

    Draft clips(const BillLine& line) const {
        if (line.part == price::Part::far_end) {
            Draft draft = clip_row(plain(line), c_, nullptr);
            draft.row.group = Group::circuits;
            return draft;
        }
        const StretchAnswer* at = at_.at_leg(line.number);
        if (at && at->separate_mm2 && bought_of(*at) == 0) return clips_beside(line, *at);
        Draft draft = clip_row(plain(line), c_, at_.cable(at));
        draft.row.size = at_.thickness_words(line.number);
        return draft;
    }

    /// The cable that stays hangs in its own cleats: only the conductor beside it is held anew.
    Draft clips_beside(const BillLine& line, const StretchAnswer& at) const {
        Draft draft = clip_row(plain(line), c_, nullptr);
        draft.row.size = significant(*at.separate_mm2, 4) + " mm² single core";
        draft.row.note = "for the conductor beside the cable that stays";
        return draft;
    }

    void residual(const BillLine& line) {
        for (Draft& draft : circuit_rows(part_, line)) put(std::move(draft), line.item);
    }

    const tables::Catalogue& c_;
    const site::Job& job_;
    const RunBill& part_;
    AtRun at_;
    std::vector<Draft> drafts_;
    std::vector<std::string> hosts_;  ///< beside drafts_: what surcharges know them by
};

}  // namespace

std::vector<Draft> drafts_of(const tables::Catalogue& catalogue, const site::Job& job,
                             const RunBill& part) {
    return Drafter(catalogue, job, part).all();
}

}  // namespace toft::ware
