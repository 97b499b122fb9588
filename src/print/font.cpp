#include "print/font.h"

#include "drawing/advances.h"

#include <cairo/cairo-ft.h>
#include <fmt/format.h>

#include <cmath>

namespace toft::print {

namespace {

Fault font_fault(std::string says) { return {"font", "", std::move(says), "", {}}; }

/// What FreeType reads from, kept until cairo lets go of the face, which may be later than we do.
struct Source {
    std::string file;
    FT_Library library = nullptr;
    FT_Face face = nullptr;

    Source() = default;
    Source(const Source&) = delete;
    Source& operator=(const Source&) = delete;
    ~Source() {
        if (face) FT_Done_Face(face);
        if (library) FT_Done_FreeType(library);
    }

    bool open() {
        if (FT_Init_FreeType(&library) != 0) return false;
        const auto* bytes = reinterpret_cast<const FT_Byte*>(file.data());
        const auto size = static_cast<FT_Long>(file.size());
        if (FT_New_Memory_Face(library, bytes, size, 0, &face) != 0) return false;
        return FT_IS_SCALABLE(face);
    }
};

void let_go(void* source) { delete static_cast<Source*>(source); }

constexpr cairo_user_data_key_t source_key{};

}  // namespace

struct Face::Opened {
    FT_Face letters = nullptr;
    cairo_font_face_t* handle = nullptr;

    Opened() = default;
    Opened(const Opened&) = delete;
    Opened& operator=(const Opened&) = delete;
    ~Opened() { cairo_font_face_destroy(handle); }
};

unsigned long Face::glyph_of(char32_t character) const {
    return FT_Get_Char_Index(opened_->letters, character);
}

double Face::advance_of(unsigned long glyph) const {
    FT_Face face = opened_->letters;
    // Cairo leaves the turn of the last text it drew set on the face.
    constexpr FT_Int32 plain = FT_LOAD_NO_SCALE | FT_LOAD_IGNORE_TRANSFORM;
    if (FT_Load_Glyph(face, static_cast<FT_UInt>(glyph), plain) != 0) return 0;
    return static_cast<double>(face->glyph->advance.x) / face->units_per_EM;
}

void* Face::handle() const { return opened_->handle; }

Outcome<Face> Face::open(std::string file, drawing::Weight weight) {
    auto source = std::make_unique<Source>();
    source->file = std::move(file);
    if (!source->open()) return failed(font_fault("the font file cannot be read as a font"));
    auto opened = std::make_shared<Opened>();
    opened->letters = source->face;
    opened->handle = cairo_ft_font_face_create_for_ft_face(source->face, FT_LOAD_NO_HINTING);
    if (cairo_font_face_set_user_data(opened->handle, &source_key, source.get(), let_go) !=
        CAIRO_STATUS_SUCCESS) {
        return failed(font_fault("the font file cannot be used for printing"));
    }
    static_cast<void>(source.release());
    Face face;
    face.opened_ = std::move(opened);
    if (face.glyph_of(replacement) == 0) {
        return failed(font_fault("the font lacks the sign for characters it does not have"));
    }
    for (char32_t letter = U' '; letter <= U'~'; ++letter) {
        const double found = face.advance_of(face.glyph_of(letter));
        const double measured = drawing::advance(letter, weight);
        if (std::fabs(found - measured) <= 1e-6) continue;
        return failed(font_fault(
            fmt::format("the font is not the one drawings are measured with: \"{}\" is {:.3f} em "
                        "wide, not {:.3f}; DejaVu Sans 2.37 is wanted",
                        static_cast<char>(letter), found, measured)));
    }
    return face;
}

Outcome<Fonts> open_fonts(std::string normal, std::string bold) {
    auto upright = Face::open(std::move(normal), drawing::Weight::normal);
    if (!upright) return failed(upright.error());
    auto heavy = Face::open(std::move(bold), drawing::Weight::bold);
    if (!heavy) return failed(heavy.error());
    return Fonts{std::move(*upright), std::move(*heavy)};
}

}  // namespace toft::print
