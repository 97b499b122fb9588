#include "pack/lists.h"

#include "dxf/dxf.h"
#include "gallery/pictures.h"
#include "workbook/materials.h"

namespace toft::pack {

namespace {

constexpr const char* not_yet = "NOT YET KNOWN TO BE SAFE";

bool open(const paper::Subject& s) { return !s.answer.schemes[s.scheme].conditional_on.empty(); }

}  // namespace

Outcome<std::vector<File>> lists_of(const paper::Subject& s, ware::Prices prices) {
    ware::List list = ware::list_of(s.catalogue, s.job, s.answer.schemes[s.scheme]);
    page::Paper about = paper::blank(s, "Materials");
    if (open(s)) {
        about.caution = std::string(not_yet) + ", do not order. " + about.caution;
        for (ware::Row& row : list.rows) {
            row.note = std::string(not_yet) + (row.note.empty() ? "" : "; ") + row.note;
        }
    }
    auto book =
        workbook::materials(list, {about.job, about.edition, about.caution, s.date}, prices);
    if (!book) return failed(book.error());
    return std::vector<File>{{"materials.csv", ware::csv_of(list, prices)},
                             {"materials.xlsx", std::move(*book)}};
}

Outcome<std::vector<File>> drawings_of(const paper::Subject& s) {
    std::vector<File> files;
    for (const char* name : {"route", "trench"}) {
        digging::Measured drawn =
            gallery::find_picture(name)->to_scale({s.catalogue, s.job, s.answer, s.scheme});
        if (open(s)) {
            drawn.scene.items.emplace_back(
                drawing::text({0, -20}, std::string(not_yet) + ": do not dig", {.size = 16}));
        }
        auto text =
            dxf::to_dxf(drawn.scene, {1 / digging::units_a_metre(drawn.one_to), drawn.zero});
        if (!text) return failed(text.error());
        files.push_back({std::string(name) + ".dxf", std::move(*text)});
    }
    return files;
}

}  // namespace toft::pack
