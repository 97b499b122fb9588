#include "tables/sheet.h"

namespace toft::tables {

void read_additions(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "later/addition.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        AdditionRow row{sheet.word(i, "key"),        sheet.word(i, "says"),
                        sheet.word(i, "form"),       sheet.number(i, "load_w"),
                        sheet.number(i, "length_m"), sheet.cite(i)};
        if (row.load_w <= 0 || row.length_m <= 0) {
            sheet.fault(i, "what is added draws something and stands somewhere");
        }
        c.additions.push_back(std::move(row));
    }
}

}  // namespace toft::tables
