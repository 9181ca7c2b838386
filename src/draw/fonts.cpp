// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/fonts.h"

#include "units/failure.h"

#include <harfbuzz/hb-ot.h>
#include <pango/pangofc-fontmap.h>

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <filesystem>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace legwork {

namespace {

constexpr auto kWayOut = "; if that stays so, install legwork again";

std::vector<std::string> font_files(std::string const& folder) {
    std::vector<std::string> files;
    std::error_code error;
    for (auto at = std::filesystem::directory_iterator(folder, error); !error && at != std::filesystem::end(at);
         at.increment(error))
        if (auto const end = at->path().extension(); end == ".otf" || end == ".ttf") files.push_back(at->path());
    if (error) throw Failure("cannot read the typefaces in " + folder + ": " + error.message() + kWayOut);
    std::ranges::sort(files); // the folder's own order differs from machine to machine
    return files;
}

int faces_of(FcConfig* config) {
    FcFontSet const* const set = FcConfigGetFonts(config, FcSetApplication);
    return set ? set->nfont : 0;
}

// Fontconfig keeps the reason to itself, so it is asked for once more.
std::string why_unread(std::string const& file) {
    char first = 0;
    int const opened = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    bool const is_read = opened >= 0 && ::read(opened, &first, 1) == 1;
    int const error = errno;
    if (opened >= 0) ::close(opened);
    return is_read ? "it is damaged, or could not be read" : std::generic_category().message(error);
}

// All of them: with one missing, its words would be set in another face, and nobody would say so.
void add_files(FcConfig* config, std::vector<std::string> const& files) {
    for (std::string const& file : files) {
        int const before = faces_of(config);
        FcConfigAppFontAddFile(config, reinterpret_cast<FcChar8 const*>(file.c_str()));
        if (faces_of(config) == before)
            throw Failure("cannot use the typeface " + file + ": " + why_unread(file) + kWayOut);
    }
}

std::string family_of(FcConfig* config) {
    FcFontSet const* const set = FcConfigGetFonts(config, FcSetApplication);
    FcChar8* family = nullptr;
    if (set && set->nfont > 0) FcPatternGetString(set->fonts[0], FC_FAMILY, 0, &family);
    return family ? reinterpret_cast<char const*>(family) : "";
}

// The machine's own copies of the bundled family are left out: another version would have other widths.
FontConfig machine_config(std::string const& family, std::vector<std::string> const& files) {
    FontConfig config{FcInitLoadConfig()};
    if (!config) config.reset(FcConfigCreate());
    std::string const rule = "<fontconfig><selectfont><rejectfont><pattern><patelt name=\"family\"><string>" + family +
                             "</string></patelt></pattern></rejectfont></selectfont></fontconfig>";
    FcConfigParseAndLoadFromMemory(config.get(), reinterpret_cast<FcChar8 const*>(rule.c_str()), FcFalse);
    FcConfigBuildFonts(config.get());
    add_files(config.get(), files);
    return config;
}

FontDescription description(std::string const& family, Weight weight, double size) {
    FontDescription d{pango_font_description_new()};
    pango_font_description_set_family(d.get(), family.c_str());
    pango_font_description_set_weight(d.get(), weight == Weight::bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(d.get(), size * PANGO_SCALE);
    return d;
}

// x-height over body size, from the face's own table.
double x_height_ratio(PangoContext* context, std::string const& family) {
    constexpr double size = 1000;
    auto const d = description(family, Weight::regular, size);
    GOwned<PangoFont> const font{pango_context_load_font(context, d.get())};
    hb_font_t* const face = font ? pango_font_get_hb_font(font.get()) : nullptr;
    hb_position_t height = 0;
    int scale_x = 0, scale_y = 0;
    if (!face || !hb_ot_metrics_get_position(face, HB_OT_METRICS_TAG_X_HEIGHT, &height) || height <= 0) return 0.5;
    hb_font_get_scale(face, &scale_x, &scale_y);
    return scale_y > 0 ? static_cast<double>(height) / scale_y : 0.5;
}

char const* after(char const* letter) { return g_utf8_next_char(letter); }

} // namespace

std::string printable(std::string_view words) {
    std::unique_ptr<char, Freed<g_free>> const valid{
        g_utf8_make_valid(words.data(), static_cast<gssize>(words.size()))};
    std::string clean;
    for (char const* at = valid.get(); *at; at = after(at)) {
        gunichar const c = g_utf8_get_char(at);
        bool const breaks = c == 0x2028 || c == 0x2029; // line and paragraph separators
        if (g_unichar_iscntrl(c) || breaks)
            clean += ' ';
        else if ((c & 0xFFFE) == 0xFFFE)
            clean += "\xef\xbf\xbd"; // U+FFFE, U+FFFF and their like are no characters
        else
            clean.append(at, after(at));
    }
    return clean;
}

CairoFontOptions unhinted() {
    CairoFontOptions options{cairo_font_options_create()};
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    return options;
}

Fonts::Inside::Faces Fonts::Inside::faces(FontConfig config) {
    Faces made;
    made.config = std::move(config);
    made.map.reset(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT));
    if (!made.map)
        throw Failure("the drawing library was built without FreeType fonts; install Debian's libpangocairo");
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(made.map.get()), made.config.get());
    pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(made.map.get()), 72);
    made.context.reset(pango_font_map_create_context(made.map.get()));

    pango_cairo_context_set_font_options(made.context.get(), unhinted().get());
    pango_context_set_round_glyph_positions(made.context.get(), FALSE);
    pango_context_set_language(made.context.get(), pango_language_from_string("en")); // not the machine's
    pango_context_set_base_dir(made.context.get(), PANGO_DIRECTION_LTR);
    return made;
}

Fonts::Inside::Inside(std::string const& folder) : files_(font_files(folder)) {
    FontConfig config{FcConfigCreate()};
    add_files(config.get(), files_);
    // Pango starts fontconfig over all of the machine's fonts, also where it is given others; unless there is a
    // current configuration already.
    FcConfigSetCurrent(config.get());
    family_ = family_of(config.get());
    if (family_.empty()) throw Failure("no typeface (*.otf, *.ttf) in " + folder + kWayOut);
    bundled_ = faces(std::move(config));
    size_ = kUnit / x_height_ratio(bundled_.context.get(), family_);
    regular_ = Face(bundled_.context.get(), description(family_, Weight::regular, size_).get());
    bold_ = Face(bundled_.context.get(), description(family_, Weight::bold, size_).get());
}

PangoContext* Fonts::Inside::machine_context() const {
    if (!machine_.context) machine_ = faces(machine_config(family_, files_));
    return machine_.context.get();
}

GOwned<PangoLayout> Fonts::Inside::layout(PangoContext* context, std::string_view clean_words, Weight weight) const {
    GOwned<PangoLayout> made{pango_layout_new(context)};
    auto const d = description(family_, weight, size_);
    pango_layout_set_font_description(made.get(), d.get());
    pango_layout_set_single_paragraph_mode(made.get(), TRUE);
    pango_layout_set_text(made.get(), clean_words.data(), static_cast<int>(clean_words.size()));
    return made;
}

GOwned<PangoLayout> Fonts::Inside::layout(std::string_view clean_words, Weight weight) const {
    auto made = layout(bundled_.context.get(), clean_words, weight);
    if (pango_layout_get_unknown_glyphs_count(made.get()) == 0) return made;
    return layout(machine_context(), clean_words, weight);
}

SetLine Fonts::Inside::set(std::string_view words, Weight weight) const {
    SetLine line;
    line.words = printable(words);
    if (face(weight).sets(line.words)) return face(weight).set(line.words);
    line.layout = layout(line.words, weight);
    PangoRectangle logical{};
    pango_layout_get_extents(line.layout.get(), nullptr, &logical);
    line.width = logical.width;
    return line;
}

SetLine const& Fonts::Inside::line(std::string_view words, Weight weight) const {
    auto& lines = weight == Weight::bold ? bold_lines_ : regular_lines_;
    auto const at = lines.find(words);
    return at != lines.end() ? at->second : lines.emplace(words, set(words, weight)).first->second;
}

std::vector<std::string> Fonts::Inside::missing(std::string_view words) const {
    std::vector<std::string> letters;
    auto const& whole = line(words, Weight::regular);
    if (!whole.layout || pango_layout_get_unknown_glyphs_count(whole.layout.get()) == 0) return letters;
    for (char const* at = whole.words.c_str(); *at; at = after(at)) {
        std::string const letter(at, after(at));
        auto const& alone = line(letter, Weight::regular);
        if (alone.layout && pango_layout_get_unknown_glyphs_count(alone.layout.get()) > 0 &&
            std::ranges::count(letters, letter) == 0)
            letters.push_back(letter);
    }
    return letters;
}

Fonts::Fonts(std::string const& folder) : inside_(std::make_unique<Inside>(folder)) {}
Fonts::~Fonts() = default;

Mm Fonts::width(std::string_view words, Mm x_height, Weight weight) const {
    return static_cast<double>(inside_->line(words, weight).width) / PANGO_SCALE * x_height / kUnit;
}

std::vector<std::string> Fonts::missing(std::string_view words) const { return inside_->missing(words); }

} // namespace legwork
