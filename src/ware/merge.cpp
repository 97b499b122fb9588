#include "ware/merge.h"

#include "ware/pence.h"

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <tuple>

namespace toft::ware {

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }

/// The price each in pence; below 0 for none.
long long pence_each(const Row& row) { return row.each ? pence(*row.each) : -1; }

bool alike(const Draft& a, const Draft& b) {
    const auto key = [](const Draft& d) {
        const Row& r = d.row;
        return std::make_tuple(r.group, r.what, r.size, r.unit, r.amount.has_value(), pence_each(r),
                               d.bought);
    };
    return key(a) == key(b);
}

void add_note(std::string& to, const std::string& note) {
    if (note.empty() || to.find(note) != std::string::npos) return;
    to += (to.empty() ? "" : "; ") + note;
}

void add(Draft& to, const Draft& more) {
    to.row.quantity += more.row.quantity;
    if (more.row.amount) {
        to.row.amount = of_pence(pence(*to.row.amount) + pence(*more.row.amount));
    }
    to.row.lines += more.row.lines;
    add_note(to.row.note, more.row.note);
    to.pieces.insert(to.pieces.end(), more.pieces.begin(), more.pieces.end());
    to.where.insert(to.where.end(), more.where.begin(), more.where.end());
    to.count += more.count;
    to.tonnes += more.tonnes;
}

}  // namespace

bool by_figures(const std::string& a, const std::string& b) {
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < a.size() && j < b.size()) {
        if (digit(a[i]) && digit(b[j])) {
            char* end_a = nullptr;
            char* end_b = nullptr;
            const double x = std::strtod(a.c_str() + i, &end_a);
            const double y = std::strtod(b.c_str() + j, &end_b);
            if (x < y || y < x) return x < y;
            i = static_cast<std::size_t>(end_a - a.c_str());
            j = static_cast<std::size_t>(end_b - b.c_str());
            continue;
        }
        if (a[i] != b[j]) return a[i] < b[j];
        ++i;
        ++j;
    }
    return a.size() - i < b.size() - j;
}

std::vector<Draft> merged(std::vector<Draft> drafts) {
    std::vector<Draft> out;
    for (Draft& draft : drafts) {
        const auto same = std::find_if(out.begin(), out.end(),
                                       [&](const Draft& one) { return alike(one, draft); });
        if (same == out.end()) {
            out.push_back(std::move(draft));
        } else {
            add(*same, draft);
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const Draft& a, const Draft& b) {
        if (a.row.group != b.row.group) return a.row.group < b.row.group;
        if (a.row.what != b.row.what) return a.row.what < b.row.what;
        return by_figures(a.row.size, b.row.size);
    });
    return out;
}

}  // namespace toft::ware
