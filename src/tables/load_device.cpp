#include "tables/sheet.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::tables {

namespace {

std::string curve_of(Sheet& sheet, std::size_t row) {
    const std::string word = sheet.word(row, "curve");
    return word == "-" ? std::string() : word;
}

void read_ratings(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    Sheet sheet(files, "device/device.csv", catalogue.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        Device device;
        device.standard = sheet.word(i, "standard");
        device.curve = curve_of(sheet, i);
        device.rating = amperes(sheet.number(i, "rating_a"));
        device.breaking = sheet.cited(i, kiloamperes(sheet.number(i, "breaking_ka")));
        catalogue.devices.push_back(std::move(device));
    }
}

void read_curves(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    Sheet sheet(files, "device/curve.csv", catalogue.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        for (Device& device : catalogue.devices) {
            if (device.standard != sheet.word(i, "standard") ||
                device.curve != curve_of(sheet, i) ||
                device.rating.number() != sheet.number(i, "rating_a")) {
                continue;
            }
            device.points.push_back({seconds(sheet.number(i, "time_s")),
                                     sheet.cited(i, amperes(sheet.number(i, "current_a")))});
        }
    }
    for (Device& device : catalogue.devices) {
        std::stable_sort(device.points.begin(), device.points.end(),
                         [](const CurvePoint& a, const CurvePoint& b) { return b.time < a.time; });
        if (device.points.size() < 2) {
            faults.push_back({"data",
                              "device/curve.csv",
                              fmt::format("{} {} {} A has fewer than two points", device.standard,
                                          device.curve, device.rating.number()),
                              "",
                              {}});
        }
    }
}

void read_let_through(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    Sheet sheet(files, "device/let_through.csv", catalogue.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        const double from = sheet.number(i, "rating_from_a");
        const double to = sheet.number(i, "rating_to_a");
        const Amperes breaking = kiloamperes(sheet.number(i, "breaking_ka"));
        for (Device& device : catalogue.devices) {
            const double rating = device.rating.number();
            if (device.standard == sheet.word(i, "standard") &&
                device.curve == curve_of(sheet, i) && rating >= from && rating <= to &&
                device.breaking.value == breaking) {
                device.let_through =
                    sheet.cited(i, ampere_square_seconds(sheet.number(i, "i2t_a2s")));
            }
        }
    }
}

void read_rcds(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    Sheet sheet(files, "device/rcd.csv", catalogue.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        RcdTimes& times =
            sheet.word(i, "kind") == "delayed" ? catalogue.rcd_delayed : catalogue.rcd_general;
        const auto longest = sheet.cited(i, seconds(sheet.number(i, "longest_ms") / 1000));
        if (sheet.number(i, "multiple") == 1) times.longest_1 = longest;
        if (sheet.number(i, "multiple") == 5) times.longest_5 = longest;
    }
    for (double sensitivity : {100.0, 300.0}) {
        catalogue.run_rcds.push_back(
            {milliamperes(sensitivity), true, catalogue.rcd_delayed.longest_1});
    }
}

}  // namespace

void read_devices(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    read_ratings(files, catalogue, faults);
    read_curves(files, catalogue, faults);
    read_let_through(files, catalogue, faults);
    read_rcds(files, catalogue, faults);
}

}  // namespace toft::tables
