#include "client/clients_choice.h"
#include "base/dates.h"
#include "client/choice_table.h"
#include "client/client_picture.h"
#include "client/client_reasons.h"
#include "page/pages.h"
#include "paper/plain_words.h"
#include "paper/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;
using page::Block;

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
        put(what_it_is(s_, choices_));
        put(price_table(s_, choices_));
        differences();
        asked_ = what_it_asks(s_, choices_);
        if (!asked_.table.rows.empty()) {
            put(page::Heading{"What each rests on, risks and asks"});
            put(asked_.table);
        }
        common();
        assumed_and_left_out();
        decision();
        words();
        return std::move(paper_);
    }

private:
    ChoiceLines open_words(const SchemeAnswer& one) const {
        ChoiceLines words;
        for (const std::string& fact : one.conditional_on) {
            words.push_back(fact_words(s_.answer, fact));
        }
        return words;
    }

    /// What is dangerous today, whatever is chosen; each once.
    ChoiceLines dangers() const {
        ChoiceLines all;
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            std::vector<const SchemeAnswer*> parts{&scheme(i)};
            for (const SchemeAnswer& one : scheme(i).further) parts.push_back(&one);
            for (const SchemeAnswer* part : parts) {
                for (const std::string& line : part->cautions) {
                    if (line.rfind("Danger now", 0) != 0) continue;
                    if (std::find(all.begin(), all.end(), line) == all.end()) all.push_back(line);
                }
            }
        }
        return all;
    }

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
        for (const std::string& danger : dangers()) put(page::Caution{danger});
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            if (scheme(i).conditional_on.empty()) continue;
            put(
                page::Caution{fmt::format("Choice {} is not yet known to be safe. It may be built "
                                          "only if this turns out well: {}.",
                                          i + 1, joined_by(open_words(scheme(i)), "; "))});
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

    template <class List>
    Shared shared(List list) const {
        std::vector<ChoiceLines> lists;
        for (std::size_t i = 0; i < choices_.size(); ++i) lists.push_back(list(scheme(i)));
        return shared_lines(lists);
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
        for (const auto& [name, words] : asked_.alike) {
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

    /// On one page, so that nobody signs without what is signed.
    void decision() {
        page::Paper with = paper_;
        const std::vector<Block> blocks = decision_blocks();
        with.blocks.insert(with.blocks.end(), blocks.begin(), blocks.end());
        if (page::pages(with).size() > page::pages(paper_).size()) put(page::NewPage{});
        for (const Block& block : blocks) put(block);
    }

    std::vector<Block> decision_blocks() const {
        std::vector<Block> blocks{page::Heading{"Your decision"}};
        const long days = std::lround(s_.catalogue.handover.terms.offer_days.value);
        const std::string until = days_after(s_.date, days);
        const char* what = prices_invented(s_.answer)
                               ? "Once real prices stand here, they are good for"
                               : "The prices are good for";
        blocks.push_back(page::Words{
            until.empty() ? fmt::format("{} {} days from the day they are given.", what, days)
                          : fmt::format("{} {} days from {}: until {}.", what, days,
                                        long_date(s_.date), long_date(until))});
        page::Table ticks{
            {{"Tick one", 1}, {"Choice", 6}, {"Total", 2, page::Side::right}}, {}, true};
        for (std::size_t i = 0; i < choices_.size(); ++i) {
            const bool sound = scheme(i).conditional_on.empty();
            ticks.rows.push_back({{"",
                                   fmt::format("Choice {}: {}{}", i + 1, choices_[i].reason,
                                               sound ? "" : " – not yet known to be safe"),
                                   pence_words(scheme(i).price.total)}});
        }
        ticks.rows.push_back({{"", "None of them; I would like to talk about it", ""}});
        blocks.push_back(std::move(ticks));
        for (const char* name :
             {"Your name", "Signature", "Date", "For the firm: name, signature"}) {
            blocks.push_back(page::Field{name});
        }
        return blocks;
    }

    const Subject& s_;
    std::vector<Choice> choices_;
    Asked asked_;
    page::Paper paper_;
};

}  // namespace

page::Paper clients_choice(const Subject& s) { return ChoiceWriter(s).write(); }

}  // namespace toft::paper
