#pragma once
// The letters of printed drawings, taken from the very font files whose widths `drawing` measures
// with, never from whatever the machine would choose.

#include "base/outcome.h"
#include "drawing/text_style.h"

#include <memory>
#include <string>

namespace toft::print {

/// Shown in place of a character that the font lacks.
inline constexpr char32_t replacement = 0xFFFD;

/// One face of the font, opened from memory. Copies share it.
class Face {
public:
    /// `file` holds a TrueType font. Faults: `font` when it is none, when it lacks the replacement
    /// character, or when a letter of ASCII is not as wide as drawing::advance says (then words
    /// would run into each other).
    static Outcome<Face> open(std::string file, drawing::Weight weight);

    /// Number of the letter in the font; 0 when the font lacks it.
    unsigned long glyph_of(char32_t character) const;

    /// How far the pen moves for a letter of that number, em.
    double advance_of(unsigned long glyph) const;

    /// The cairo_font_face_t behind it, owned by the face.
    void* handle() const;

private:
    struct Opened;
    std::shared_ptr<const Opened> opened_;
};

struct Fonts {
    Face normal;
    Face bold;

    const Face& of(drawing::Weight weight) const {
        return weight == drawing::Weight::bold ? bold : normal;
    }
};

/// Opens both; `normal` and `bold` are the bytes of DejaVuSans.ttf and DejaVuSans-Bold.ttf.
Outcome<Fonts> open_fonts(std::string normal, std::string bold);

}  // namespace toft::print
