#include "tables/sheet.h"

#include <fmt/format.h>

namespace toft::tables {

namespace {

struct Arrangement {
    const char* word;
    std::vector<TablePoint>* points;
};

class ConstantsReader {
public:
    ConstantsReader(EmbeddedFiles files, Catalogue& catalogue, Faults& faults)
        : files_(files),
          catalogue_(catalogue),
          constants_(catalogue.cable_constants),
          faults_(faults) {}

    void read() {
        materials();
        separate();
        armour();
        CableConstants& k = constants_;
        split("cable/factor_soil.csv", "laying", "resistivity_k_m_per_w",
              {{"direct", &k.soil_direct}, {"duct", &k.soil_duct}});
        split("cable/factor_depth.csv", "laying", "depth_m",
              {{"direct", &k.depth_direct}, {"duct", &k.depth_duct}});
        split("cable/factor_grouping.csv", "arrangement", "circuits",
              {{"bunched", &k.grouped_enclosed},
               {"clipped", &k.grouped_clipped},
               {"tray", &k.grouped_tray},
               {"buried direct", &k.grouped_direct},
               {"buried in duct", &k.grouped_duct}});
        insulation();
        harmonic();
    }

private:
    Sheet open(const char* name) { return {files_, name, catalogue_.citations, faults_}; }

    void missing(const char* file, const std::string& what) {
        faults_.push_back({"data", file, what, "", {}});
    }

    Material* material(Metal metal) {
        return metal == Metal::copper      ? &constants_.copper
               : metal == Metal::aluminium ? &constants_.aluminium
                                           : &constants_.steel;
    }

    void materials() {
        const char* const file = "cable/material.csv";
        Sheet sheet = open(file);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto metal = metal_of(sheet.word(i, "material"));
            if (!metal) {
                sheet.fault(i, fmt::format("{} is no metal", sheet.word(i, "material")));
                continue;
            }
            *material(*metal) = {sheet.cited(i, per_kelvin(sheet.number(i, "alpha20_per_k"))),
                                 sheet.cited(i, kelvins(sheet.number(i, "beta_c"))),
                                 sheet.figure(i, "big_k")};
        }
        for (const Metal metal : {Metal::copper, Metal::aluminium, Metal::steel}) {
            if (!material(metal)->big_k.citation) {
                missing(file, fmt::format("there are no constants of {}", metal_word(metal)));
            }
        }
    }

    void separate() {
        const char* const file = "cable/fault_k.csv";
        Sheet sheet = open(file);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            if (sheet.word(i, "use") == "separate" && sheet.word(i, "material") == "copper") {
                constants_.separate = heat_in(sheet, i);
            }
        }
        if (!constants_.separate.k.citation) {
            missing(file, "there is no k of a separate copper conductor");
        }
    }

    void armour() {
        const char* const file = "cable/armour_ac.csv";
        Sheet sheet = open(file);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const std::string key = sheet.word(i, "key");
            if (key == "ac_factor") constants_.armour_ac_factor = sheet.figure(i, "value");
            if (key == "reactance") {
                constants_.armour_x = sheet.cited(i, milliohms_per_metre(sheet.number(i, "value")));
            }
        }
        if (!constants_.armour_ac_factor.citation) missing(file, "there is no ac_factor");
        if (!constants_.armour_x.citation) missing(file, "there is no reactance");
    }

    /// Reads a factor table whose rows go to one list or another by the word in `column`.
    void split(const char* file, const char* column, const char* x,
               const std::vector<Arrangement>& lists) {
        Sheet sheet = open(file);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            bool known = false;
            for (const Arrangement& list : lists) {
                if (sheet.word(i, column) != list.word) continue;
                sheet.points(*list.points, i, x, "factor");
                known = true;
            }
            if (!known) sheet.fault(i, fmt::format("{} is no {}", sheet.word(i, column), column));
        }
        for (const Arrangement& list : lists) {
            sort_points(*list.points);
            if (list.points->empty()) missing(file, fmt::format("no rows for {}", list.word));
        }
    }

    void insulation() {
        const char* const file = "cable/factor_insulation.csv";
        Sheet sheet = open(file);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            sheet.points(constants_.insulation, i, "length_mm", "factor");
        }
        sort_points(constants_.insulation);
        if (constants_.insulation.empty()) missing(file, "no rows");
    }

    void harmonic() {
        const char* const file = "cable/factor_harmonic.csv";
        Sheet sheet = open(file);
        auto& steps = constants_.harmonic;
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const double to = sheet.number(i, "third_to_percent");
            if (!steps.empty() && to <= steps.back().to) sheet.fault(i, "the shares must rise");
            const std::string by = sheet.word(i, "by");
            if (by != "line" && by != "neutral")
                sheet.fault(i, by + " is neither line nor neutral");
            steps.push_back({to, by == "neutral", sheet.figure(i, "factor")});
        }
        if (steps.empty()) missing(file, "no rows");
    }

    EmbeddedFiles files_;
    Catalogue& catalogue_;
    CableConstants& constants_;
    Faults& faults_;
};

}  // namespace

FaultHeat heat_in(Sheet& sheet, std::size_t row) {
    return {sheet.cited(row, celsius(sheet.number(row, "initial_c"))),
            sheet.cited(row, celsius(sheet.number(row, "final_c"))),
            sheet.cited(row, heat_constant(sheet.number(row, "k")))};
}

void read_cable_constants(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    ConstantsReader(files, catalogue, faults).read();
}

}  // namespace toft::tables
