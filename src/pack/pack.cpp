#include "pack/pack.h"

#include "page/pages.h"
#include "print/pdf.h"

#include <fmt/format.h>

#include <iterator>

namespace toft::pack {

namespace {

using Sheets = std::vector<drawing::Scene>;

struct Laid {
    const paper::Kind* kind = nullptr;
    Sheets sheets;
};

/// What stands in front of a pack: which papers there are, and on which sheet each begins.
page::Paper front(const paper::Subject& subject, const std::vector<Laid>& papers,
                  std::size_t own_sheets) {
    page::Paper paper = paper::blank(subject, "Pack");
    paper.blocks.push_back(page::Heading{subject.answer.job, page::Level::chapter});
    page::Table table{{{"Paper", 4},
                       {"For whom", 8},
                       {"Pages", 1.5, page::Side::right},
                       {"Sheet", 1.5, page::Side::right}},
                      {}};
    std::size_t next = own_sheets + 1;
    for (const Laid& one : papers) {
        table.rows.push_back({{one.kind->name, one.kind->says, std::to_string(one.sheets.size()),
                               std::to_string(next)}});
        next += one.sheets.size();
    }
    paper.blocks.push_back(std::move(table));
    for (page::Block& block : paper::standing_cautions(subject)) {
        paper.blocks.push_back(std::move(block));
    }
    return paper;
}

Outcome<void> add(Pack& pack, const std::string& name, const Sheets& sheets,
                  const print::Fonts& fonts, const std::string& date) {
    auto printed = print::to_pdf(sheets, fonts, date);
    if (!printed) return failed(printed.error());
    for (const char32_t one : printed->missing) {
        if (pack.missing.find(one) == std::u32string::npos) pack.missing += one;
    }
    pack.files.push_back({name, std::move(printed->bytes), sheets.size()});
    return {};
}

Sheets together(const paper::Subject& subject, std::vector<Laid> papers) {
    const std::size_t own = page::pages(front(subject, papers, 0)).size();
    Sheets all = page::pages(front(subject, papers, own));
    for (Laid& one : papers) {
        all.insert(all.end(), std::make_move_iterator(one.sheets.begin()),
                   std::make_move_iterator(one.sheets.end()));
    }
    for (std::size_t i = 0; i < all.size(); ++i) page::mark_sheet(all[i], i + 1, all.size());
    return all;
}

}  // namespace

Outcome<Pack> pack_of(const paper::Subject& subject, const std::vector<const paper::Kind*>& kinds,
                      const print::Fonts& fonts) {
    Pack pack;
    std::vector<Laid> papers;
    for (const paper::Kind* kind : kinds) {
        papers.push_back({kind, page::pages(paper::written(*kind, subject))});
        auto done =
            add(pack, std::string(kind->file) + ".pdf", papers.back().sheets, fonts, subject.date);
        if (!done) return failed(done.error());
    }
    if (papers.size() < 2) return pack;
    auto done = add(pack, whole_name, together(subject, std::move(papers)), fonts, subject.date);
    if (!done) return failed(done.error());
    return pack;
}

}  // namespace toft::pack
