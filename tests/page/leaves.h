#pragma once
// What can be read on laid-out sheets, and where it stands.

#include "drawing/measure.h"
#include "page/pages.h"

#include <string>
#include <vector>

namespace toft::page {

struct Read {
    std::string words;
    drawing::Box box;
    std::size_t sheet = 0;
};

inline void read_items(const drawing::Items& items, drawing::Point shift, std::size_t sheet,
                       std::vector<Read>& out) {
    for (const drawing::Item& item : items) {
        if (const auto* text = std::get_if<drawing::Text>(&item.shape)) {
            std::string words;
            for (const drawing::Span& span : text->spans) words += span.text;
            out.push_back({words, drawing::moved(drawing::box_of(item), shift), sheet});
        } else if (const auto* group = std::get_if<drawing::Group>(&item.shape)) {
            read_items(group->items, shift + group->shift, sheet, out);
        }
    }
}

inline std::vector<Read> read(const std::vector<drawing::Scene>& sheets) {
    std::vector<Read> all;
    for (std::size_t i = 0; i < sheets.size(); ++i) read_items(sheets[i].items, {}, i, all);
    return all;
}

/// What stands between head and foot.
inline std::vector<Read> read_field(const std::vector<drawing::Scene>& sheets) {
    std::vector<Read> inside;
    for (const Read& one : read(sheets)) {
        if (drawing::contains(drawing::grown(field, 1), one.box)) inside.push_back(one);
    }
    return inside;
}

/// All words of the field after one another, without spaces.
inline std::string run_on(const std::vector<Read>& reads) {
    std::string all;
    for (const Read& one : reads) {
        for (const char c : one.words) {
            if (c != ' ') all += c;
        }
    }
    return all;
}

}  // namespace toft::page
