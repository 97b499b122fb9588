#include "store/transfer.h"

#include "codec/document.h"
#include "store/parcel.h"
#include "store/prices_rows.h"
#include "store/store.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

constexpr const char* beginning = "{\"format\":\"toft-store/1\",\n\"jobs\":[\n";

Fault too_large(const char* remedy) {
    return {"too-large",
            "",
            fmt::format("the text would have more than {} bytes or {} values: {}", largest_transfer,
                        most_values, remedy),
            "",
            {}};
}

/// At most so many values of JSON: each is the whole, or follows a bracket or a comma.
std::size_t values_at_most(const std::string& text) {
    std::size_t count = 1;
    bool in_string = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (in_string && text[i] == '\\') {
            ++i;
        } else if (text[i] == '"') {
            in_string = !in_string;
        } else if (!in_string && (text[i] == ',' || text[i] == '[' || text[i] == '{')) {
            ++count;
        }
    }
    return count;
}

bool too_much(const std::string& text) {
    return text.size() > largest_transfer || values_at_most(text) > most_values;
}

std::vector<std::string> all_ids(Work& work) {
    std::vector<std::string> ids;
    Rows rows(work, "SELECT id FROM job ORDER BY number");
    while (rows.next()) ids.push_back(rows.text(0));
    return ids;
}

}  // namespace

Outcome<std::string> export_job(Store& store, const std::string& id) {
    Work work(store.database(), Work::Kind::reads);
    std::string text = beginning + parcel_text(parcel_of(work, id)) + "]}\n";
    if (too_much(text)) {
        work.fail(too_large("copy the file of the store instead"));
    }
    return finished(work, std::move(text));
}

Outcome<std::string> export_all(Store& store) {
    Work work(store.database(), Work::Kind::reads);
    std::string text = beginning;
    bool first = true;
    for (const std::string& id : all_ids(work)) {
        if (!work.sound() || text.size() > largest_transfer) break;
        text += (first ? "" : ",\n") + parcel_text(parcel_of(work, id));
        first = false;
    }
    text += "]";
    if (const auto prices = read_prices(work)) {
        const codec::Json book{{"name", prices->name}, {"csv", prices->csv}};
        text += ",\n\"prices\":" + book.dump(-1, ' ', false, codec::Json::error_handler_t::replace);
    }
    text += "}\n";
    if (work.sound() && too_much(text)) {
        work.fail(too_large("export job by job, or copy the file of the store"));
    }
    return finished(work, std::move(text));
}

std::string id_of(unsigned long long high, unsigned long long low) {
    high = (high & ~0xf000ull) | 0x4000ull;
    low = (low & ~(3ull << 62)) | (2ull << 62);
    return fmt::format("{:08x}-{:04x}-{:04x}-{:04x}-{:012x}", high >> 32, high >> 16 & 0xffff,
                       high & 0xffff, low >> 48, low & 0xffffffffffffull);
}

}  // namespace toft::store
