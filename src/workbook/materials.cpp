#include "workbook/materials.h"

#include "base/dates.h"

#include <xlsxwriter.h>

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <vector>

namespace toft::workbook {

namespace {

Fault failure(const std::string& what) {
    return {"workbook", "", "the workbook could not be written: " + what, "", {}};
}

/// A file of its own that is gone with it; `path` is empty where none could be made.
class Temporary {
public:
    Temporary() {
        std::error_code error;
        const auto folder = std::filesystem::temp_directory_path(error);
        if (error) return;
        std::string name = (folder / "toft-XXXXXX").string();
        // Only the name is wanted: the library opens the file itself.
        const int descriptor = mkstemp(name.data());
        if (descriptor < 0) return;
        if (std::FILE* file = fdopen(descriptor, "wb")) std::fclose(file);
        path_ = name;
    }
    ~Temporary() {
        std::error_code error;
        if (!path_.empty()) std::filesystem::remove(path_, error);
    }
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;

    const std::string& path() const { return path_; }

    std::string bytes() const {
        std::ifstream in(path_, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    }

private:
    std::string path_;
};

struct Column {
    const char* name;
    double width;
};

/// One sheet being written, row by row; the first error is kept.
class Sheet {
public:
    Sheet(lxw_workbook* book, const char* name, const std::vector<Column>& columns)
        : sheet_(workbook_add_worksheet(book, name)),
          bold_(workbook_add_format(book)),
          text_(workbook_add_format(book)),
          money_(workbook_add_format(book)) {
        format_set_bold(bold_);
        format_set_text_wrap(bold_);
        format_set_align(bold_, LXW_ALIGN_VERTICAL_TOP);
        format_set_text_wrap(text_);
        format_set_align(text_, LXW_ALIGN_VERTICAL_TOP);
        format_set_num_format(money_, "0.00");
        format_set_align(money_, LXW_ALIGN_VERTICAL_TOP);
        lxw_col_t at = 0;
        for (const Column& column : columns) {
            keep(worksheet_set_column(sheet_, at, at, column.width, nullptr));
            keep(worksheet_write_string(sheet_, 0, at++, column.name, bold_));
        }
        worksheet_freeze_panes(sheet_, 1, 0);
        worksheet_set_landscape(sheet_);
        worksheet_set_paper(sheet_, 9);  // A4
        worksheet_fit_to_pages(sheet_, 1, 0);
        keep(worksheet_repeat_rows(sheet_, 0, 0));
    }

    void next_row() {
        ++row_;
        column_ = 0;
    }
    void word(const std::string& text) {
        if (!text.empty()) keep(worksheet_write_string(sheet_, row_, column_, text.c_str(), text_));
        ++column_;
    }
    void strong(const std::string& text) {
        keep(worksheet_write_string(sheet_, row_, column_++, text.c_str(), bold_));
    }
    void number(double value) {
        keep(worksheet_write_number(sheet_, row_, column_++, value, text_));
    }
    void money(const std::optional<Pounds>& value) {
        if (value) keep(worksheet_write_number(sheet_, row_, column_, value->number(), money_));
        ++column_;
    }
    /// A formula beside the figure that it comes to.
    void money_by(const std::string& formula, Pounds value) {
        keep(worksheet_write_formula_num(sheet_, row_, column_++, formula.c_str(), money_,
                                         value.number()));
    }
    void skip(int columns) { column_ = static_cast<lxw_col_t>(column_ + columns); }

    lxw_row_t row() const { return row_; }
    lxw_error error() const { return error_; }

private:
    void keep(lxw_error error) {
        if (error_ == LXW_NO_ERROR) error_ = error;
    }

    lxw_worksheet* sheet_;
    lxw_format* bold_;
    lxw_format* text_;
    lxw_format* money_;
    lxw_row_t row_ = 0;
    lxw_col_t column_ = 0;
    lxw_error error_ = LXW_NO_ERROR;
};

constexpr double widths[] = {12, 44, 24, 10, 7, 40, 60, 12, 12};

/// True where quantity times price comes to the amount as a spreadsheet would round it.
bool comes_to(const ware::Row& row) {
    const double product = ware::shown_quantity(row) * row.each->number();
    const double hundred = product * 100;
    // Too close to half a penny to be sure which way it is rounded there.
    if (std::fabs(hundred - std::floor(hundred) - 0.5) < 1e-6) return false;
    return std::llround(hundred) == std::llround(row.amount->number() * 100);
}

void amount_of(Sheet& sheet, const ware::Row& row) {
    if (!row.amount || !row.each || !comes_to(row)) return sheet.money(row.amount);
    const auto line = sheet.row() + 1;
    sheet.money_by(fmt::format("=ROUND(D{}*H{},2)", line, line), *row.amount);
}

lxw_error write_list(lxw_workbook* book, const ware::List& list, ware::Prices prices) {
    const std::vector<std::string> names = ware::columns_of(prices);
    std::vector<Column> columns;
    for (std::size_t i = 0; i < names.size(); ++i) columns.push_back({names[i].c_str(), widths[i]});
    Sheet sheet(book, "Materials", columns);
    for (const ware::Row& row : list.rows) {
        sheet.next_row();
        sheet.word(ware::group_word(row.group));
        sheet.word(row.what);
        sheet.word(row.size);
        sheet.number(ware::shown_quantity(row));
        sheet.word(row.unit);
        sheet.word(row.order);
        sheet.word(row.note);
        if (prices == ware::Prices::without) continue;
        sheet.money(row.each);
        amount_of(sheet, row);
    }
    if (prices == ware::Prices::with && !list.rows.empty()) {
        const auto last = sheet.row() + 1;
        sheet.next_row();
        sheet.skip(1);
        sheet.strong("all materials, without tax");
        sheet.skip(6);
        sheet.money_by(fmt::format("=SUM(I2:I{})", last), list.amount);
    }
    return sheet.error();
}

lxw_error write_handling(lxw_workbook* book, const ware::List& list) {
    Sheet sheet(book, "Handling",
                {{"run to", 24},
                 {"cable", 44},
                 {"length to cut", 18},
                 {"smallest bending radius", 24},
                 {"pull through duct", 80}});
    for (const ware::Handling& one : list.handling) {
        sheet.next_row();
        for (const std::string* text : {&one.to, &one.cable, &one.cut, &one.bend, &one.pull}) {
            sheet.word(*text);
        }
    }
    return sheet.error();
}

lxw_error write_about(lxw_workbook* book, const About& about) {
    Sheet sheet(book, "About", {{"of", 16}, {"is", 100}});
    const auto row = [&](const char* name, const std::string& text) {
        sheet.next_row();
        sheet.word(name);
        sheet.word(text);
    };
    row("job", about.job);
    row("rules and data", about.edition);
    row("date", about.date);
    row("caution", about.caution);
    return sheet.error();
}

lxw_error name_it(lxw_workbook* book, std::time_t created) {
    std::string title = "Materials";
    lxw_doc_properties properties = {};
    properties.title = title.data();
    properties.created = created;
    return workbook_set_properties(book, &properties);
}

}  // namespace

Outcome<std::string> materials(const ware::List& list, const About& about, ware::Prices prices) {
    const std::optional<long> day = days_since_1970(about.date);
    if (!day || *day < 0) {
        return failed(
            {"date", "", fmt::format("\"{}\" is no date; write 2026-11-25", about.date), "", {}});
    }
    const Temporary file;
    if (file.path().empty()) return failed(failure("no temporary file"));
    lxw_workbook* book = workbook_new(file.path().c_str());
    if (!book) return failed(failure("no memory"));
    lxw_error error = name_it(book, static_cast<std::time_t>(*day) * 86400);
    for (const lxw_error next :
         {write_list(book, list, prices), write_handling(book, list), write_about(book, about)}) {
        if (error == LXW_NO_ERROR) error = next;
    }
    const lxw_error closed = workbook_close(book);
    if (error == LXW_NO_ERROR) error = closed;
    if (error != LXW_NO_ERROR) return failed(failure(lxw_strerror(error)));
    std::string bytes = file.bytes();
    if (bytes.empty()) return failed(failure("the temporary file could not be read"));
    return bytes;
}

}  // namespace toft::workbook
