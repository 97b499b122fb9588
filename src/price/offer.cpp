#include "price/offer.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace toft::price {

namespace {

/// So many of a family or sort, in order of first meeting.
class Counted {
public:
    void add(const std::string& what) {
        const auto at = std::find_if(all_.begin(), all_.end(),
                                     [&](const auto& one) { return one.first == what; });
        if (at == all_.end()) {
            all_.emplace_back(what, 1);
        } else {
            ++at->second;
        }
    }

    std::string words() const {
        std::string text;
        for (const auto& [what, count] : all_) {
            text += fmt::format("{}{} of {}", text.empty() ? "" : ", ", count, what);
        }
        return text;
    }

private:
    std::vector<std::pair<std::string, int>> all_;
};

std::string sort_of(const tables::Device& device) {
    switch (device.kind) {
        case tables::Kind::fuse:
        case tables::Kind::rewirable:
            return device.standard + " fuses";
        case tables::Kind::breaker:
            return "breakers";
        case tables::Kind::rcbo:
            return "RCBOs";
        case tables::Kind::moulded:
            return "moulded breakers";
    }
    return "";
}

void add_once(std::vector<std::string>& all, const std::string& one) {
    if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

template <class Price>
bool missing(const std::vector<Price>& prices, std::size_t i) {
    return std::isnan(prices[i].number());
}

}  // namespace

void offer_only_priced(const Book& book, tables::Catalogue& catalogue) {
    for (std::size_t i = 0; i < catalogue.cables.size(); ++i) {
        catalogue.cables[i].offered = !missing(book.cables, i);
    }
    for (std::size_t i = 0; i < catalogue.separates.size(); ++i) {
        catalogue.separates[i].offered = !missing(book.separates, i);
    }
    for (std::size_t i = 0; i < catalogue.devices.size(); ++i) {
        catalogue.devices[i].offered = !missing(book.devices, i);
    }
}

std::vector<std::string> unpriced_items(const Book& book, const tables::Catalogue& catalogue) {
    std::vector<std::string> items;
    for (std::size_t i = 0; i < catalogue.cables.size(); ++i) {
        if (missing(book.cables, i)) add_once(items, cable_item(catalogue.cables[i]));
    }
    for (std::size_t i = 0; i < catalogue.separates.size(); ++i) {
        if (missing(book.separates, i)) add_once(items, separate_item(catalogue.separates[i]));
    }
    for (std::size_t i = 0; i < catalogue.devices.size(); ++i) {
        if (missing(book.devices, i)) add_once(items, device_item(catalogue.devices[i]));
    }
    return items;
}

std::string left_out_words(const Book& book, const tables::Catalogue& catalogue) {
    Counted counted;
    for (const auto& cable : catalogue.cables) {
        if (!cable.offered) counted.add(std::string(tables::family_word(cable.family)) + " cables");
    }
    for (const auto& separate : catalogue.separates) {
        if (!separate.offered) counted.add("separate conductors");
    }
    for (const auto& device : catalogue.devices) {
        if (!device.offered) counted.add(sort_of(device));
    }
    const std::string words = counted.words();
    if (words.empty()) return "";
    return fmt::format(
        "left out for want of a price in {}, so that no way that needs them new is shown: {}",
        book.name, words);
}

}  // namespace toft::price
