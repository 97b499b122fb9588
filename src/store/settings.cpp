#include "store/settings.h"

#include "store/prices_rows.h"
#include "store/store.h"

#include <fmt/format.h>

namespace toft::store {

namespace {

// Names of our own begin with a dot, which no caller's may.
constexpr const char* price_name = ".own-prices.name";
constexpr const char* price_csv = ".own-prices.csv";
constexpr std::size_t longest_setting_name = 100;

std::optional<std::string> read(Work& work, const std::string& name) {
    Rows rows(work, "SELECT text FROM setting WHERE name = ?", name);
    return rows.next() ? std::optional(rows.text(0)) : std::nullopt;
}

void write(Work& work, const std::string& name, const std::string& text) {
    work.run("INSERT INTO setting(name, text) VALUES(?, ?) ON CONFLICT DO UPDATE SET text = ?",
             name, text, text);
}

void drop(Work& work, const std::string& name) {
    work.run("DELETE FROM setting WHERE name = ?", name);
}

void check_name(Work& work, const std::string& name) {
    if (!name.empty() && name.size() <= longest_setting_name && name.front() != '.') return;
    work.fail("bad-name", fmt::format("a setting's name has 1 to {} bytes and no dot before it",
                                      longest_setting_name));
}

}  // namespace

std::optional<OwnPrices> read_prices(Work& work) {
    const auto name = read(work, price_name);
    const auto csv = read(work, price_csv);
    if (!name || !csv) return std::nullopt;
    return OwnPrices{*name, *csv};
}

void write_prices(Work& work, const OwnPrices& prices) {
    write(work, price_name, prices.name);
    write(work, price_csv, prices.csv);
}

Outcome<std::optional<OwnPrices>> own_prices(Store& store) {
    Work work(store.database(), Work::Kind::reads);
    return finished(work, read_prices(work));
}

Faults set_own_prices(Store& store, const OwnPrices& prices) {
    Work work(store.database(), Work::Kind::writes);
    write_prices(work, prices);
    return work.finish();
}

Faults drop_own_prices(Store& store) {
    Work work(store.database(), Work::Kind::writes);
    drop(work, price_name);
    drop(work, price_csv);
    return work.finish();
}

Outcome<std::optional<std::string>> setting(Store& store, const std::string& name) {
    Work work(store.database(), Work::Kind::reads);
    check_name(work, name);
    return finished(work, read(work, name));
}

Outcome<std::map<std::string, std::string>> settings(Store& store, const std::string& beginning) {
    Work work(store.database(), Work::Kind::reads);
    std::map<std::string, std::string> found;
    Rows rows(work,
              "SELECT name, text FROM setting WHERE substr(name, 1, 1) <> '.' "
              "AND substr(name, 1, length(?)) = ?",
              beginning, beginning);
    while (rows.next()) found.emplace(rows.text(0), rows.text(1));
    return finished(work, std::move(found));
}

Faults set_setting(Store& store, const std::string& name, const std::string& text) {
    Work work(store.database(), Work::Kind::writes);
    check_name(work, name);
    write(work, name, text);
    return work.finish();
}

Faults drop_setting(Store& store, const std::string& name) {
    Work work(store.database(), Work::Kind::writes);
    check_name(work, name);
    drop(work, name);
    return work.finish();
}

}  // namespace toft::store
