#include "digging/sheet.h"

#include "digging/ink.h"

namespace toft::digging {

void sheet_head(parts::WordColumn& column, const std::string& kind, const std::string& title) {
    column.words(kind, {.size = 12, .colour = palette::graphite}, 2);
    column.words(title, {.size = 17, .weight = Weight::bold}, 3);
    column.gap(6);
}

void sheet_foot(parts::WordColumn& column) {
    column.gap(10);
    column.placed(
        {Line{{column.left(), column.y()}, {column.right(), column.y()}, stroked(palette::faint)}},
        column.y() + 4);
    column.words(digging_caution(), {.size = 11, .weight = Weight::bold});
}

void say(parts::WordColumn& column, const std::string& words) { column.words(words, {.size = 11}); }

void say_small(parts::WordColumn& column, const std::string& words) {
    TextStyle style{.size = 10.5};
    style.colour = palette::graphite;
    column.words(words, style);
}

const char* digging_caution() {
    return "Before digging: ask for the drawings of all services, scan, and dig by hand near them. "
           "The local code, the network operator, the owners of the services and a competent, "
           "licensed person decide.";
}

}  // namespace toft::digging
