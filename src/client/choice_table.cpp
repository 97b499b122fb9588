#include "client/choice_table.h"

#include "base/text.h"
#include "client/client_reasons.h"
#include "paper/plain_words.h"
#include "paper/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;
using page::Row;

constexpr double name_share = 1.5;
constexpr double choice_share = 3;

class Beside {
public:
    Beside(const Subject& s, const std::vector<Choice>& choices) : s_(s), choices_(choices) {}

    page::Table what_it_is() const {
        page::Table all = table(page::Side::left);
        if (choices_.size() > 1) {
            all.rows.push_back(row("Why it is here", [&](std::size_t i) {
                return capital(choices_[i].reason) + ".";
            }));
        }
        if (several_runs()) {
            for (const std::string& id : fed_buildings()) all.rows.push_back(building_row(id));
            all.rows.push_back(row("In all", [&](std::size_t i) { return room_words(i); }));
        } else {
            all.rows.push_back(row(
                "What it is", [&](std::size_t i) { return sentence_plain(*parts(i).front()); }));
            all.rows.push_back(row("What it gives", [&](std::size_t i) {
                return current_words(*parts(i).front()) + "\n" + room_words(i);
            }));
        }
        if (any_conditional()) {
            all.rows.push_back(row("Only if", [&](std::size_t i) {
                ChoiceLines open;
                for (const std::string& fact : scheme(i).conditional_on) {
                    open.push_back(fact_words(s_.answer, fact));
                }
                return open.empty() ? "sound as it stands" : joined_lines(capitals(open), true);
            }));
        }
        return all;
    }

    Asked what_it_asks() const {
        Asked asked{table(page::Side::left), {}};
        page::Table& all = asked.table;
        add_or_say(
            asked, "What its safety rests on", row("What its safety rests on", [&](std::size_t i) {
                return by_run(
                    i, [](const SchemeAnswer& part) { return capital(rests_on(part)) + "."; });
            }));
        add_or_say(asked, "What stays a risk", row("What stays a risk", [&](std::size_t i) {
                       return by_run(i, [&](const SchemeAnswer& part) {
                           return residual_risk(s_.answer, part);
                       });
                   }));
        add_own(all, "What it asks", [](const SchemeAnswer& one) {
            ChoiceLines lines = one.house_work;
            for (std::string& line : told_lines(one)) lines.push_back(std::move(line));
            lines.insert(lines.end(), one.needs_a_person.begin(), one.needs_a_person.end());
            return lines;
        });
        add_own(all, "Be warned", [](const SchemeAnswer& one) { return one.cautions; });
        return asked;
    }

    /// What the total may lie between by the book, where it gives ranges.
    void add_range(page::Table& all) const {
        const auto ranged = [](const answer::PriceAnswer& p) {
            return std::round(100 * p.total_low) != std::round(100 * p.total_high);
        };
        bool any = false;
        for (std::size_t i = 0; i < choices_.size(); ++i) any = any || ranged(scheme(i).price);
        if (!any) return;
        all.rows.push_back(row("May lie between", [&](std::size_t i) {
            const answer::PriceAnswer& p = scheme(i).price;
            return pence_words(p.total_low) + " and " + pence_words(p.total_high);
        }));
    }

    page::Table prices() const {
        using answer::PriceAnswer;
        page::Table all = table(page::Side::right);
        all.columns.front().head = prices_invented(s_.answer) ? "Example prices" : "Prices";
        const auto add = [&](const char* name, double PriceAnswer::*part, bool strong = false) {
            all.rows.push_back(
                row(name, [&](std::size_t i) { return pence_words(scheme(i).price.*part); }));
            all.rows.back().strong = strong;
        };
        add("At the house", &PriceAnswer::house_end);
        add("The cable", &PriceAnswer::run);
        add("In the ground", &PriceAnswer::ground);
        add(several_runs() ? "In the buildings" : "In the building", &PriceAnswer::far_end);
        add("Tests and papers", &PriceAnswer::test_and_paper);
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (std::round(100 * scheme(i).price.put_right_first) == 0) continue;
            add("Put right first", &PriceAnswer::put_right_first);
            break;
        }
        add("Before tax", &PriceAnswer::net);
        add("VAT", &PriceAnswer::vat);
        add("Total", &PriceAnswer::total, true);
        add_range(all);
        if (loss_matters(s_, choices_)) {
            all.rows.push_back(
                row(fmt::format("Lost as heat in the cable over {} years, at today's prices",
                                significant(scheme(0).over_years.years, 3)),
                    [&](std::size_t i) { return pence_words(scheme(i).over_years.lost); }));
            all.rows.push_back(row("Both together", [&](std::size_t i) {
                return pence_words(scheme(i).over_years.total);
            }));
        }
        return all;
    }

private:
    const SchemeAnswer& scheme(std::size_t i) const {
        return s_.answer.schemes[choices_[i].scheme];
    }

    std::vector<const SchemeAnswer*> parts(std::size_t i) const {
        return runs_of(with_scheme(s_, choices_[i].scheme));
    }

    template <class Cell>
    Row row(std::string name, Cell cell) const {
        Row all{{std::move(name)}};
        for (std::size_t i = 0; i < choices_.size(); ++i) all.cells.push_back(cell(i));
        return all;
    }

    page::Table table(page::Side side) const {
        page::Table all{{{"", name_share}}, {}};
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            all.columns.push_back({fmt::format("Choice {}", i + 1), choice_share, side});
        }
        return all;
    }

    /// One line a run; runs of which the same is said together.
    template <class Say>
    std::string by_run(std::size_t i, Say say) const {
        const auto all = parts(i);
        if (all.size() == 1) return say(*all.front());
        std::vector<std::pair<std::string, ChoiceLines>> groups;
        for (const SchemeAnswer* part : all) {
            const std::string words = say(*part);
            auto same = std::find_if(groups.begin(), groups.end(),
                                     [&](const auto& one) { return one.first == words; });
            if (same == groups.end()) same = groups.insert(same, {words, {}});
            same->second.push_back(building_name(s_, part->building.id));
        }
        ChoiceLines lines;
        for (const auto& [words, names] : groups) {
            lines.push_back(groups.size() == 1 ? words : listed(names) + ": " + words);
        }
        return joined_lines(lines);
    }

    static std::string current_words(const SchemeAnswer& part) {
        return fmt::format("Up to {} amps; about {} amps are expected.",
                           significant(part.run.device.rating_a, 6),
                           significant(part.run.figures.design_current_a, 3));
    }

    std::string room_words(std::size_t i) const {
        return fmt::format("Room left in its tightest limit ({}): {}.",
                           limit_plain(scheme(i).governed_by), percent_left(scheme(i).headroom));
    }

    bool several_runs() const {
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (!scheme(i).further.empty()) return true;
        }
        return false;
    }

    /// Ids of all buildings that any choice feeds, from the house outwards.
    ChoiceLines fed_buildings() const {
        ChoiceLines ids;
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            for (const SchemeAnswer* part : parts(i)) {
                if (std::find(ids.begin(), ids.end(), part->building.id) == ids.end()) {
                    ids.push_back(part->building.id);
                }
            }
        }
        return ids;
    }

    /// One building in every choice.
    Row building_row(const std::string& id) const {
        return row(building_name(s_, id), [&](std::size_t i) -> std::string {
            for (const SchemeAnswer* part : parts(i)) {
                if (part->building.id == id) {
                    return sentence_plain(*part) + "\n" + current_words(*part);
                }
            }
            return "Not built.";
        });
    }

    bool any_conditional() const {
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (!scheme(i).conditional_on.empty()) return true;
        }
        return false;
    }

    /// Where all choices say the same it is said once.
    void add_or_say(Asked& asked, const char* name, Row one) const {
        const auto& cells = one.cells;
        if (std::all_of(cells.begin() + 1, cells.end(),
                        [](const std::string& cell) { return cell.empty(); })) {
            return;
        }
        if (std::all_of(cells.begin() + 1, cells.end(),
                        [&](const std::string& cell) { return cell == cells[1]; })) {
            asked.alike.push_back({name, cells[1]});
        } else {
            asked.table.rows.push_back(std::move(one));
        }
    }

    template <class List>
    Shared shared_of(List list) const {
        std::vector<ChoiceLines> lists;
        for (std::size_t i = 0; i < choices_.size(); ++i) lists.push_back(list(scheme(i)));
        return shared_lines(lists);
    }

    /// What not all choices say.
    template <class List>
    void add_own(page::Table& all, const char* name, List list) const {
        const Shared lines = shared_of(list);
        Row one =
            row(name, [&](std::size_t i) { return joined_lines(capitals(lines.own[i]), true); });
        if (std::any_of(one.cells.begin() + 1, one.cells.end(),
                        [](const std::string& cell) { return !cell.empty(); })) {
            all.rows.push_back(std::move(one));
        }
    }

    const Subject& s_;
    const std::vector<Choice>& choices_;
};

}  // namespace

page::Table what_it_is(const Subject& s, const std::vector<Choice>& choices) {
    return Beside(s, choices).what_it_is();
}

page::Table price_table(const Subject& s, const std::vector<Choice>& choices) {
    return Beside(s, choices).prices();
}

Asked what_it_asks(const Subject& s, const std::vector<Choice>& choices) {
    return Beside(s, choices).what_it_asks();
}

}  // namespace toft::paper
