#pragma once
// PDFs read back with Poppler's programs, and the figures on them held against an answer.

#include "answer/answer.h"
#include "base/csv.h"
#include "codec/answer.h"
#include "support/catalogue.h"
#include "support/examples.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <vector>

#include <unistd.h>

namespace toft::pack {

/// What that program prints of a PDF; its name is put in place of {}.
inline std::string printed_by(const std::string& command, const std::string& pdf) {
    std::string name = (std::filesystem::temp_directory_path() / "toft-pdf-XXXXXX").string();
    const int handle = mkstemp(name.data());
    if (handle < 0) std::abort();
    close(handle);
    std::ofstream(name, std::ios::binary) << pdf;
    std::FILE* pipe = popen(fmt::format(fmt::runtime(command), name).c_str(), "r");
    std::string out;
    char buffer[4096];
    while (const std::size_t got = std::fread(buffer, 1, sizeof buffer, pipe)) {
        out.append(buffer, got);
    }
    EXPECT_EQ(pclose(pipe), 0) << command;
    std::filesystem::remove(name);
    return out;
}

inline std::string text_of_pdf(const std::string& pdf) {
    return printed_by("pdftotext -layout {} -", pdf);
}

/// In the order in which it was written: cell after cell.
inline std::string cells_of_pdf(const std::string& pdf) {
    return printed_by("pdftotext -raw {} -", pdf);
}

inline std::size_t pages_in(const std::string& pdf) {
    const std::string info = printed_by("pdfinfo {}", pdf);
    const std::size_t at = info.find("Pages:");
    return at == std::string::npos ? 0 : std::strtoul(info.c_str() + at + 6, nullptr, 10);
}

inline bool all_fonts_embedded(const std::string& pdf) {
    // Columns of pdffonts behind the encoding: emb sub uni.
    const std::string listed = printed_by("pdffonts {}", pdf);
    std::size_t at = listed.find('\n', listed.find("----"));
    std::size_t fonts = 0;
    while (at != std::string::npos && at + 1 < listed.size()) {
        const std::size_t end = listed.find('\n', at + 1);
        const std::string line = listed.substr(at + 1, end - at - 1);
        if (line.find(" yes yes") == std::string::npos) return false;
        ++fonts;
        at = end;
    }
    return fonts > 0;
}

inline std::size_t occurrences(const std::string& text, const std::string& words) {
    std::size_t count = 0;
    for (std::size_t at = text.find(words); at != std::string::npos;
         at = text.find(words, at + 1)) {
        ++count;
    }
    return count;
}

/// Without white space.
inline std::string squeezed(const std::string& text) {
    std::string all;
    for (const char c : text) {
        if (c != ' ' && c != '\n' && c != '\f' && c != '\t') all += c;
    }
    return all;
}

/// A figure as it is printed, with a unit behind it.
struct Shown {
    std::string text;
    double value = 0;
    int places = 0;  ///< decimals that are shown
};

inline std::vector<Shown> figures_with_units(const std::string& words) {
    std::vector<Shown> all;
    for (const char* unit : {" Ω", " kA", " MΩ", " mA", " ms", " A", " V", " mm²", " m"}) {
        const std::string wanted = unit;
        for (std::size_t at = words.find(wanted); at != std::string::npos;
             at = words.find(wanted, at + 1)) {
            const char next = at + wanted.size() < words.size() ? words[at + wanted.size()] : ' ';
            if (std::isalpha(static_cast<unsigned char>(next))) continue;
            std::size_t from = at;
            while (from > 0 && (std::isdigit(static_cast<unsigned char>(words[from - 1])) ||
                                words[from - 1] == '.')) {
                --from;
            }
            if (from == at) continue;
            const std::string digits = words.substr(from, at - from);
            const std::size_t point = digits.find('.');
            all.push_back(
                {digits + wanted, std::strtod(digits.c_str(), nullptr),
                 point == std::string::npos ? 0 : static_cast<int>(digits.size() - point - 1)});
        }
    }
    return all;
}

/// Sums of money, in pence.
inline std::vector<long> sums_in(const std::string& words) {
    std::vector<long> all;
    const std::string pound = "£";
    for (std::size_t at = words.find(pound); at != std::string::npos;
         at = words.find(pound, at + 1)) {
        std::string digits;
        std::size_t next = at + pound.size();
        for (; next < words.size(); ++next) {
            const char c = words[next];
            if (std::isdigit(static_cast<unsigned char>(c)) || c == '.')
                digits += c;
            else if (c != ',')
                break;
        }
        if (!digits.empty()) all.push_back(std::lround(100 * std::strtod(digits.c_str(), nullptr)));
    }
    return all;
}

/// The last cells of a comma-separated table added up.
inline long last_column_in_pence(const std::string& csv) {
    long sum = 0;
    for (const CsvRow& row : support::need(parse_csv("materials.csv", csv), "a table").rows) {
        if (row.cells.back().empty()) continue;
        sum += std::lround(100 * std::strtod(row.cells.back().c_str(), nullptr));
    }
    return sum;
}

/// Every number of an answer, of a job's words and of the limits that a test is held against.
class Known {
public:
    Known(const std::string& example, const site::Job& job, const answer::Answer& answer) {
        answer::Answer chosen = answer;
        chosen.schemes.resize(1);
        take(nlohmann::json::parse(codec::write_answer(chosen)));
        take(nlohmann::json::parse(support::project_text("examples/" + example + ".json")));
        take_ohms(job.intake.ze);
        take_ohms(job.intake.ze_declared);
        const auto& c = support::catalogue();
        numbers_.push_back(c.limits.insulation_least.value.number());
        numbers_.push_back(c.limits.insulation_look.value.number());
        numbers_.push_back(c.limits.ring_equal.value.number());
        for (const auto* times : {&c.rcd_general, &c.rcd_delayed}) {
            numbers_.push_back(times->longest_1.value.number());
            numbers_.push_back(times->shortest_1.number());
        }
        numbers_.push_back(200e-3);  // of the step: current of a continuity test
        numbers_.push_back(500);     // of the step: volts of an insulation test
    }

    /// Of a table or of common practice, that a paper may quote.
    void take(double number) { numbers_.push_back(number); }

    bool has(const Shown& shown) const {
        const double half = 0.5000001 * std::pow(10.0, -shown.places);
        for (const double scale : {1.0, 1e3, 1e-3, 1e-6}) {
            for (const double number : numbers_) {
                // Whole figures may have lost digits before their point.
                const double near =
                    std::fmax(half, 5.1e-4 * std::fabs(shown.value) * (shown.places == 0 ? 1 : 0));
                if (std::fabs(number * scale - shown.value) <= near) return true;
            }
        }
        return false;
    }

private:
    void take_ohms(const site::Fact<Ohms>& fact) {
        if (fact.known) numbers_.push_back(fact.high.number());
    }

    void take(const nlohmann::json& value) {
        if (value.is_number()) numbers_.push_back(value.get<double>());
        if (!value.is_structured()) return;
        for (const auto& one : value) take(one);
    }

    std::vector<double> numbers_;
};

}  // namespace toft::pack
