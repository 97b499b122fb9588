#include "print/typeset.h"

#include "drawing/utf8.h"

namespace toft::print {

namespace {

Row row_for(drawing::Script script, double size) {
    Row row;
    row.size = script == drawing::Script::level ? size : size * drawing::script_size;
    if (script == drawing::Script::below) row.drop = drawing::script_drop * size;
    if (script == drawing::Script::above) row.drop = -drawing::script_rise * size;
    return row;
}

}  // namespace

Typeset typeset(const drawing::Text& text, const Face& face) {
    Typeset set;
    for (const drawing::Span& span : text.spans) {
        Row row = row_for(span.script, text.style.size);
        for (char32_t character : drawing::drawable(span.text)) {
            unsigned long number = face.glyph_of(character);
            if (number == 0) {
                set.missing += character;
                character = replacement;
                number = face.glyph_of(character);
            }
            row.glyphs.push_back({number, set.width, drawing::to_utf8({&character, 1})});
            set.width += row.size * face.advance_of(number);
        }
        set.rows.push_back(std::move(row));
    }
    return set;
}

}  // namespace toft::print
