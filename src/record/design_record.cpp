#include "record/design_record.h"

#include "base/text.h"
#include "gallery/pictures.h"
#include "paper/run_sheet.h"
#include "record/parts.h"
#include "site/built.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;
using page::Caution;
using page::Field;
using page::Heading;
using page::Words;

/// What stands first: the decision, whether it is one, who signs.
Blocks opening(const Subject& s) {
    const SchemeAnswer& scheme = s.answer.schemes[s.scheme];
    Blocks blocks{Heading{"Design record: " + s.answer.job, page::Level::chapter},
                  Words{scheme.sentence, {}, true}};
    for (const std::string& fact : scheme.conditional_on) {
        blocks.push_back(Caution{"Sound only if this turns out well, which is not known yet: " +
                                 fact_words(s.answer, fact)});
    }
    blocks.push_back(Words{fmt::format(
        "Scheme {} of the answer, {}; its headroom is {} %, set by {}; {} with tax by {}.",
        scheme.rank, scheme.words, fixed(100 * scheme.headroom, 0), scheme.governed_by,
        pence_words(scheme.price.total), scheme.price.basis)});
    blocks.push_back(
        Words{fmt::format("{} buildable schemes were considered; {} are sound as things stand.",
                          s.answer.search.candidates, s.answer.search.sound)});
    blocks.push_back(Heading{"Who designed it"});
    for (const char* name :
         {"Designer's name", "Firm and registration", "Checked against (edition)",
          "What was done otherwise, and why", "Date and signature"}) {
        blocks.push_back(Field{name});
    }
    append(blocks, standing_cautions(s));
    return blocks;
}

/// The answer with its open facts named as people name them, not by where a job file has them.
answer::Answer in_words(const answer::Answer& answer) {
    answer::Answer told = answer;
    for (SchemeAnswer& scheme : told.schemes) {
        for (std::string& fact : scheme.conditional_on) {
            for (const answer::UnknownAnswer& unknown : answer.unknowns) {
                if (unknown.fact == fact && !unknown.says.empty()) fact = unknown.says;
            }
        }
    }
    return told;
}

/// Of runs from the house all; of others those that know such runs.
Blocks drawings(const Subject& s) {
    Blocks blocks;
    const answer::Answer told = in_words(s.answer);
    const SchemeAnswer& way = told.schemes[s.scheme];
    const site::Job built = answer::as_built(s.job, way);
    for (const SchemeAnswer* part : runs_of(s)) {
        const bool alone = built.runs.size() == 1;
        const site::Job job = alone ? built : answer::seen_from(built, part->run.id);
        const answer::Answer answer = alone ? told : answer::for_run(told, part->run.id);
        for (const char* name : {"place", "single-line", "curves"}) {
            const gallery::Picture* picture = gallery::find_picture(name);
            if (!part->run.feeder.empty() && !picture->from_building) continue;
            blocks.push_back(page::WholePage{picture->draw({s.catalogue, job, answer, s.scheme})});
        }
    }
    return blocks;
}

Blocks advice_of(const Subject& s) {
    if (s.answer.advice.empty()) return {};
    page::Table table{
        {{"About", 3}, {"What is asked", 6}, {"How it stands here", 6}, {"Clause", 3}},
        {},
        false,
        true};
    for (const special::Advice& one : s.answer.advice) {
        table.rows.push_back(
            {{one.about, one.asks, one.says, one.footing ? one.footing->clause : ""}});
    }
    return {Heading{"Special things"}, std::move(table)};
}

Blocks duties(const Subject& s) {
    std::vector<std::string> work, tell, person, cautions;
    const auto add = [](std::vector<std::string>& list, const std::string& line) {
        for (const std::string& told : list) {
            if (told == line) return;
        }
        list.push_back(line);
    };
    for (const SchemeAnswer* part : runs_of(s)) {
        for (const std::string& one : part->house_work) add(work, one);
        for (const answer::TellAnswer& one : part->tell) {
            add(tell, fmt::format("{}, {}: {}", one.who, one.when, one.why));
        }
        for (const std::string& one : part->needs_a_person) add(person, one);
        for (const std::string& one : part->cautions) add(cautions, one);
    }
    Blocks blocks;
    append(blocks, listed("First, at the house", work));
    append(blocks, listed("Who must be told or asked", tell));
    append(blocks, listed("Cautions for this scheme", cautions));
    append(blocks, listed("Needs a person", person));
    append(blocks, advice_of(s));
    return blocks;
}

Blocks fallen(const Subject& s) {
    std::vector<std::string> lines;
    for (const answer::DroppedAnswer& dropped : s.answer.dropped) {
        std::string line =
            fmt::format("{}: {} schemes ({})", dropped.rule, dropped.count, dropped.title);
        if (!dropped.nearest_says.empty()) line += "; nearest: " + dropped.nearest_says;
        lines.push_back(std::move(line));
    }
    return listed("What other schemes fell to", lines);
}

}  // namespace

page::Paper design_record(const Subject& s) {
    page::Paper paper = blank(s, "Design record");
    paper.blocks = opening(s);
    append(paper.blocks, drawings(s));
    append(paper.blocks, record_of_scheme(s));
    append(paper.blocks, record_of_rules(s));
    append(paper.blocks, duties(s));
    append(paper.blocks, record_of_facts(s));
    append(paper.blocks, record_of_earthing(s));
    append(paper.blocks, fallen(s));
    append(paper.blocks, record_of_price(s));
    append(paper.blocks, record_of_workings(s));
    append(paper.blocks, record_of_sources(s));
    return paper;
}

}  // namespace toft::paper
