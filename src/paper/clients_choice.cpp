#include "paper/clients_choice.h"

#include "base/text.h"
#include "paper/client_picture.h"
#include "paper/client_reasons.h"
#include "paper/dates.h"
#include "paper/papers.h"
#include "paper/plain_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;
using page::Block;
using page::Row;
using ChoiceLines = std::vector<std::string>;

constexpr double name_share = 1.5;
constexpr double choice_share = 3;

/// One under another in a cell; with dashes where there are several.
std::string joined_lines(const ChoiceLines& lines, bool dashes = false) {
    std::string text;
    for (const std::string& line : lines) {
        text +=
            (text.empty() ? "" : "\n") + std::string(dashes && lines.size() > 1 ? "– " : "") + line;
    }
    return text;
}

ChoiceLines capitals(ChoiceLines lines) {
    for (std::string& line : lines) line = capital(line);
    return lines;
}

std::string percent_left(double share) {
    return std::isfinite(share) ? fixed(100 * share, 0) + " %" : "all";
}

double pence(double pounds) { return std::round(100 * pounds); }

ChoiceLines told_lines(const SchemeAnswer& scheme) {
    ChoiceLines lines;
    for (const answer::TellAnswer& one : scheme.tell) {
        lines.push_back(fmt::format("{} the work, {}: {}", capital(one.when), one.who, one.why));
    }
    return lines;
}

/// The paper of one subject, block by block.
class ChoiceWriter {
public:
    explicit ChoiceWriter(const Subject& s)
        : s_(s), choices_(choices_of(s)), paper_(blank(s, "Your choice")) {}

    page::Paper write() {
        put(page::Heading{s_.answer.job.empty() ? "Your choice" : s_.answer.job,
                          page::Level::chapter});
        open();
        pictures();
        if (choices_.empty()) {
            for (Block& block : nothing_sound(s_)) put(std::move(block));
            words();
            return std::move(paper_);
        }
        put(page::Heading{choices_.size() == 1 ? "What can be built" : "The choices side by side"});
        what_it_is();
        prices();
        differences();
        what_it_asks();
        common();
        assumed_and_left_out();
        decision();
        words();
        return std::move(paper_);
    }

private:
    void put(Block block) { paper_.blocks.push_back(std::move(block)); }

    void list(const ChoiceLines& lines) {
        for (const std::string& line : lines) put(page::Words{line, "–"});
    }

    const SchemeAnswer& scheme(std::size_t i) const {
        return s_.answer.schemes[choices_[i].scheme];
    }

    std::vector<const SchemeAnswer*> parts(std::size_t i) const {
        return runs_of(with_scheme(s_, choices_[i].scheme));
    }

    void open() {
        if (choices_.empty()) {
            put(
                page::Caution{"As asked, nothing sound can be built here as far as is known today. "
                              "There is no price on this paper, because there is nothing to price "
                              "yet."});
            return;
        }
        if (prices_invented(s_.answer)) {
            put(
                page::Caution{"The prices on this paper are examples from an invented price book. "
                              "They are no offer: they show which choice is dearer, not what you "
                              "will pay."});
        }
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (scheme(i).conditional_on.empty()) continue;
            put(
                page::Caution{fmt::format("Choice {} is not yet known to be safe. It may be built "
                                          "only if this turns out well: {}.",
                                          i + 1, joined_by(scheme(i).conditional_on, "; "))});
        }
        put(
            page::Words{"Everything here was calculated from what was seen and stated. An "
                        "electrician who is competent and licensed checks it, builds it and tests "
                        "it; the local code and the network operator have the last word."});
    }

    static std::string joined_by(const ChoiceLines& lines, const char* between) {
        std::string text;
        for (const std::string& line : lines) text += (text.empty() ? "" : between) + line;
        return text;
    }

    void pictures() {
        const std::size_t shown = choices_.empty() ? s_.scheme : choices_.front().scheme;
        std::vector<ClientPicture> all = client_pictures(with_scheme(s_, shown));
        for (ClientPicture& one : all) {
            const char* what = choices_.empty() ? "The place as it stands. " : "Choice 1. ";
            put(page::Picture{std::move(one.scene), all.size() > 1 ? 150.0 : 230.0,
                              what + one.legs +
                                  " Buildings are not to scale; depths are drawn larger than "
                                  "lengths."});
        }
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

    void what_it_is() {
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
                const ChoiceLines& open = scheme(i).conditional_on;
                return open.empty() ? "sound as it stands" : joined_lines(capitals(open), true);
            }));
        }
        put(std::move(all));
    }

    bool any_conditional() const {
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (!scheme(i).conditional_on.empty()) return true;
        }
        return false;
    }

    /// Where all choices say the same it is said once.
    void add_or_say(page::Table& all, const char* name, Row one) {
        const auto& cells = one.cells;
        if (std::all_of(cells.begin() + 1, cells.end(),
                        [](const std::string& cell) { return cell.empty(); })) {
            return;
        }
        if (std::all_of(cells.begin() + 1, cells.end(),
                        [&](const std::string& cell) { return cell == cells[1]; })) {
            alike_.push_back({name, cells[1]});
        } else {
            all.rows.push_back(std::move(one));
        }
    }

    void what_it_asks() {
        page::Table all = table(page::Side::left);
        add_or_say(
            all, "What its safety rests on", row("What its safety rests on", [&](std::size_t i) {
                return by_run(
                    i, [](const SchemeAnswer& part) { return capital(rests_on(part)) + "."; });
            }));
        add_or_say(all, "What stays a risk", row("What stays a risk", [&](std::size_t i) {
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
        if (all.rows.empty()) return;
        put(page::Heading{"What each rests on, risks and asks"});
        put(std::move(all));
    }

    template <class List>
    Shared shared(List list) const {
        std::vector<ChoiceLines> lists;
        for (std::size_t i = 0; i < choices_.size(); ++i) lists.push_back(list(scheme(i)));
        return shared_lines(lists);
    }

    /// What not all choices say.
    template <class List>
    void add_own(page::Table& all, const char* name, List list) const {
        const Shared lines = shared(list);
        Row one =
            row(name, [&](std::size_t i) { return joined_lines(capitals(lines.own[i]), true); });
        if (std::any_of(one.cells.begin() + 1, one.cells.end(),
                        [](const std::string& cell) { return !cell.empty(); })) {
            all.rows.push_back(std::move(one));
        }
    }

    void prices() {
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
            if (pence(scheme(i).price.put_right_first) == 0) continue;
            add("Put right first", &PriceAnswer::put_right_first);
            break;
        }
        add("Before tax", &PriceAnswer::net);
        add("VAT", &PriceAnswer::vat);
        add("Total", &PriceAnswer::total, true);
        if (loss_matters(s_, choices_)) {
            all.rows.push_back(
                row(fmt::format("Lost as heat in the cable over {} years, at today's prices",
                                significant(scheme(0).over_years.years, 3)),
                    [&](std::size_t i) { return pence_words(scheme(i).over_years.lost); }));
            all.rows.push_back(row("Both together", [&](std::size_t i) {
                return pence_words(scheme(i).over_years.total);
            }));
        }
        put(std::move(all));
    }

    void differences() {
        if (choices_.size() > 1) {
            put(page::Heading{"The difference"});
            for (std::size_t i = 1; i < choices_.size(); ++i) {
                put(page::Words{difference_words(s_, choices_, i)});
            }
            return;
        }
        put(page::Heading{"Why there is no second choice"});
        for (Block& block : only_one(s_)) put(std::move(block));
    }

    template <class List>
    void common_part(const char* heading, List list) {
        const ChoiceLines lines = capitals(shared(list).common);
        if (lines.empty()) return;
        put(page::Words{heading, "", true});
        this->list(lines);
    }

    void common() {
        put(page::Heading{choices_.size() > 1 ? "True of every choice here"
                                              : "What it asks of you"});
        for (const auto& [name, words] : alike_) {
            put(page::Words{name, "", true});
            put(page::Words{words});
        }
        common_part("Put right first", [](const SchemeAnswer& one) { return one.house_work; });
        common_part("Who must be asked or told",
                    [](const SchemeAnswer& one) { return told_lines(one); });
        common_part("What a person must decide",
                    [](const SchemeAnswer& one) { return one.needs_a_person; });
        common_part("Be warned", [](const SchemeAnswer& one) { return one.cautions; });
    }

    void assumed_and_left_out() {
        if (!s_.answer.assumed.empty()) {
            put(page::Heading{"What is taken for granted"});
            put(page::Words{
                "If any of this is not so, say so now: the choices and prices may change."});
            list(capitals(s_.answer.assumed));
        }
        std::vector<const SchemeAnswer*> every;
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            for (const SchemeAnswer* part : parts(i)) every.push_back(part);
        }
        put(page::Heading{"What the price leaves out"});
        put(page::Words{"Usual in the trade, unless another paper of this job says otherwise:"});
        list(notices_for(s_, "excluded", every));
    }

    void words() {
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (i == 0) put(page::Heading{"For your electrician"});
            put(page::Words{fmt::format("Choice {} is way {} of the calculation: {}.", i + 1,
                                        scheme(i).rank, scheme(i).words),
                            "", false, true});
        }
        page::Table used = words_used(s_, paper_.blocks);
        if (used.rows.empty()) return;
        put(page::Heading{"Words used here"});
        put(std::move(used));
        put(page::Words{
            "Figures in brackets, such as (443.4.1), are places in the wiring standard, "
            "for whoever wants to look it up.",
            "", false, true});
    }

    void decision() {
        put(page::Heading{"Your decision"});
        const long days = std::lround(s_.catalogue.handover.terms.offer_days.value);
        const std::string until = days_after(s_.date, days);
        const char* what = prices_invented(s_.answer)
                               ? "Once real prices stand here, they are good for"
                               : "The prices are good for";
        put(page::Words{until.empty()
                            ? fmt::format("{} {} days from the day they are given.", what, days)
                            : fmt::format("{} {} days from {}: until {}.", what, days,
                                          long_date(s_.date), long_date(until))});
        page::Table ticks{
            {{"Tick one", 1}, {"Choice", 6}, {"Total", 2, page::Side::right}}, {}, true};
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            ticks.rows.push_back({{"", fmt::format("Choice {}: {}", i + 1, choices_[i].reason),
                                   pence_words(scheme(i).price.total)}});
        }
        ticks.rows.push_back({{"", "None of them; I would like to talk about it", ""}});
        put(std::move(ticks));
        for (const char* name :
             {"Your name", "Signature", "Date", "For the firm: name, signature"}) {
            put(page::Field{name});
        }
    }

    const Subject& s_;
    std::vector<Choice> choices_;
    std::vector<std::pair<std::string, std::string>> alike_;  ///< what all choices say, by its name
    page::Paper paper_;
};

}  // namespace

Shared shared_lines(const std::vector<ChoiceLines>& lists) {
    Shared shared;
    const auto in = [](const ChoiceLines& list, const std::string& line) {
        return std::find(list.begin(), list.end(), line) != list.end();
    };
    shared.own.resize(lists.size());
    for (std::size_t i = 0; i < lists.size(); ++i) {
        for (const std::string& line : lists[i]) {
            const bool everywhere =
                std::all_of(lists.begin(), lists.end(),
                            [&](const ChoiceLines& list) { return in(list, line); });
            ChoiceLines& into = everywhere ? shared.common : shared.own[i];
            if (!in(into, line)) into.push_back(line);
        }
    }
    return shared;
}

std::string difference_words(const Subject& s, const std::vector<Choice>& choices,
                             std::size_t which) {
    const SchemeAnswer& a = s.answer.schemes[choices.front().scheme];
    const SchemeAnswer& b = s.answer.schemes[choices[which].scheme];
    const double more = pence(b.price.total) - pence(a.price.total);
    std::string text = fmt::format("Choice {} ", which + 1);
    if (more == 0) {
        text += "costs the same as choice 1";
    } else {
        text += fmt::format("costs {} {} than choice 1", pence_words(std::fabs(more) / 100),
                            more > 0 ? "more" : "less");
    }
    ChoiceLines differ;
    for (const std::string& id : earthed_differently(a, b)) differ.push_back(building_name(s, id));
    if (!differ.empty() && a.further.empty()) {
        text += "; it is earthed in another way";
    } else if (!differ.empty()) {
        text += fmt::format("; {} {} earthed in another way", listed(differ),
                            differ.size() == 1 ? "is" : "are");
    }
    if (b.dependability != a.dependability) {
        text += fmt::format("; its path to earth is {} dependable",
                            b.dependability > a.dependability ? "more" : "less");
    }
    const std::string here = percent_left(b.headroom);
    const std::string there = percent_left(a.headroom);
    text += here == there
                ? "; both have the same room left, " + here
                : fmt::format("; {} of its tightest limit is left, against {}", here, there);
    if (!b.conditional_on.empty()) text += "; and it is not yet known to be safe";
    return text + ".";
}

bool loss_matters(const Subject& s, const std::vector<Choice>& choices) {
    if (choices.empty()) return false;
    const SchemeAnswer& first = s.answer.schemes[choices.front().scheme];
    const double share = s.catalogue.levers.worth.small_cost.value / 100;
    for (const Choice& choice : choices) {
        const SchemeAnswer& one = s.answer.schemes[choice.scheme];
        if (one.over_years.lost >= share * one.price.total) return true;
        if (one.over_years.total < first.over_years.total) return true;
    }
    return false;
}

bool prices_invented(const answer::Answer& answer) {
    return std::any_of(answer.cautions.begin(), answer.cautions.end(), [](const std::string& line) {
        return line.find("invented") != std::string::npos;
    });
}

page::Paper clients_choice(const Subject& s) { return ChoiceWriter(s).write(); }

}  // namespace toft::paper
