#pragma once
// Reading one JSON object key by key: kinds and ranges are checked, every fault is noted with its
// pointer, and keys nobody asked for are refused at the end. Private to codec. After `most_faults`
// faults no more are noted: a file can hold a million, and nobody reads them.

#include "base/nearest.h"
#include "codec/document.h"
#include "site/job.h"

#include <fmt/format.h>

#include <optional>

namespace toft::codec {

/// Inclusive range of a figure in the unit of its key.
struct Range {
    double low;
    double high;
    bool whole = false;  ///< only whole numbers
};

/// A place on the plan of a job: [metres east, metres north] of the house, each from -2000 to 2000.
struct Place {
    double east;
    double north;
};

class Reader {
public:
    Reader(const Json& node, std::string pointer, Faults& faults)
        : node_(node), pointer_(std::move(pointer)), faults_(faults) {}

    const std::string& pointer() const { return pointer_; }
    bool has(const char* key) const { return node_.contains(key) && !node_.at(key).is_null(); }

    /// A text of 1 to 200 bytes; empty when left out (a fault when `required`).
    std::string text(const char* key, bool required = false);
    /// One of `allowed`; empty when left out.
    std::string listed(const char* key, const std::vector<std::string>& allowed,
                       bool required = false);
    /// A word of an enumeration.
    template <class E>
    std::optional<E> word(const char* key, bool required = false) {
        const auto& all = site::words<E>();
        const std::string found = listed(key, all, required);
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (all[i] == found) return static_cast<E>(i);
        }
        return std::nullopt;
    }
    site::Answer answer(const char* key);
    /// A bare number; nothing when left out.
    std::optional<double> number(const char* key, Range range, bool required = false);
    /// A measured quantity: a bare number or an object that says how well it is known. `unit` is
    /// what one unit of the key is in Q's unit.
    template <class Q>
    site::Fact<Q> fact(const char* key, Range range, double unit = 1) {
        const site::Fact<double> f = known(key, range);
        return {f.known, Q(f.low * unit), Q(f.high * unit), f.standing, f.spread};
    }
    /// A nested object; nothing when left out.
    std::optional<Reader> object(const char* key, bool required = false);
    /// A list of objects, at most `most`.
    std::vector<Reader> objects(const char* key, std::size_t most);
    /// Where something stands on the plan; nothing when left out.
    std::optional<Place> place(const char* key);
    /// A list of 1 to 100 places along a line; empty when left out.
    std::vector<Place> places(const char* key);
    /// A list of listed words.
    std::vector<std::string> list_of(const char* key, const std::vector<std::string>& allowed);

    /// What stands at a key that may be of any kind; null when left out.
    const Json* takes(const char* key);
    /// Refuses all keys that were not asked for. Call last.
    void finish();
    void fault(const char* code, const char* key, std::string says, std::string nearest = "",
               std::vector<std::string> allowed = {});

private:
    void note(Fault fault);
    const Json* at(const char* key, bool required);
    site::Fact<double> known(const char* key, Range range);
    site::Fact<double> detailed(const Json& node, const std::string& pointer, Range range);
    std::optional<double> ranged(const Json& node, const std::string& pointer, Range range);

    const Json& node_;
    std::string pointer_;
    Faults& faults_;
    std::vector<std::string> asked_;
};

}  // namespace toft::codec
