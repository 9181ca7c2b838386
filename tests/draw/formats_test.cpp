// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/draw.h"
#include "picture.h"
#include "reader.h"
#include "source_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <limits>
#include <regex>

using namespace legwork;
using namespace legwork::draw_test;

namespace {

Fonts const& fonts() {
    static Fonts const made(in_sources("fonts"));
    return made;
}

constexpr auto kHebrew = "מטבח";
constexpr auto kEmoji = "🔥";

// Names as people type them.
std::vector<std::string> hard_names() {
    return {"A name of sixty letters that goes on and on without any end ok",
            "Élévateur à bateaux d'été, l'arrière",
            "Lavadora, señal de año",
            "Tools & <saws> \"loud\"",
            std::string(kHebrew) + " lights",
            std::string("Sauna ") + kEmoji,
            "0O 1lI 5S 8B",
            "Ω € ½ → …",
            "台所"};
}

Page page_of(std::vector<std::string> const& names) {
    Page page{215.9, 279.4, {}};
    Mm y = 20;
    for (auto const& name : names) {
        page.marks.push_back(Text{20, y, 2.5, name, Weight::bold});
        page.marks.push_back(Text{200, y + 5, 1.6, name, Weight::regular, Align::right});
        y += 10;
    }
    page.marks.push_back(Line{10, y, 205, y, 0.15});
    page.marks.push_back(Line{10, y + 5, 205, y + 5, 0.5, grey(0.4), true});
    page.marks.push_back(Box{20, y + 10, 40, 12, 0.5, kBlack, true, grey(0.93), 2});
    page.marks.push_back(Text{100, y + 60, 2, "upwards", Weight::regular, Align::centre, kBlack, 270});
    return page;
}

std::string pdf(std::vector<Page> const& pages) { return draw_pdf(pages, {"Panel directory", "2026-05-02"}, fonts()); }

} // namespace

TEST_CASE("pdf: other programs read it back", "[draw][pdf]") {
    std::string const bytes = pdf({page_of(hard_names()), page_of({"Second page"})});
    auto const checked = ask("qpdf --check FILE", bytes, "a.pdf");
    CAPTURE(checked.out);
    CHECK(checked.status == 0);
    CHECK_THAT(checked.out, !Contains("WARNING"));

    auto const words = ask("pdftotext -layout FILE -", bytes, "a.pdf").out;
    for (auto const* name :
         {"A name of sixty letters that goes on and on without any end ok", "Élévateur à bateaux d'été, l'arrière",
          "Lavadora, señal de año", "Tools & <saws> \"loud\"", "0O 1lI 5S 8B", "Second page"})
        CHECK_THAT(words, Contains(name));
    CHECK_THAT(words, Contains(kHebrew)); // in the order it is written

    auto const info = ask("pdfinfo -isodates FILE", bytes, "a.pdf").out;
    CHECK_THAT(info, Contains("Pages:") && Contains("2") && Contains("612 x 792 pts (letter)") &&
                         Contains("Panel directory") && Contains("2026-05-02T00:00:00Z"));
}

TEST_CASE("pdf: text stays text, in embedded faces", "[draw][pdf]") {
    auto const listed = ask("pdffonts FILE", pdf({page_of({"Range"})}), "a.pdf").out;
    CAPTURE(listed);
    CHECK_THAT(listed, Contains("+B612-Bold") && Contains("+B612-Regular"));
    CHECK_THAT(listed, !Contains("Type 3")); // pictures of letters
    std::istringstream lines(listed);
    std::string line;
    std::getline(lines, line);
    std::getline(lines, line);
    while (std::getline(lines, line)) CHECK(std::regex_search(line, std::regex("yes yes yes +[0-9]+ +0$")));
}

TEST_CASE("pdf: French, Spanish and the signs of the sheets need no typeface of the machine", "[draw][pdf]") {
    auto const listed =
        ask("pdffonts FILE",
            pdf({page_of({"àâäçéèêëîïôöùûüÿœæÀÂÄÇÉÈÊËÎÏÔÖÙÛÜŸŒÆ", "ñáíóúÑÁÍÓÚ¿¡«»’‘“”", "…–·→½°²×&<>'\""})}), "a.pdf");
    std::istringstream lines(listed.out);
    std::string line;
    for (int n = 0; std::getline(lines, line); ++n)
        if (n >= 2) CHECK_THAT(line, Contains("+B612-"));
}

TEST_CASE("pdf: words stand where they were put, as wide as was said", "[draw][pdf]") {
    Page page{215.9,
              279.4,
              {Text{20, 50, 2.5, "Refrigerator", Weight::bold},
               Text{200, 80, 3.9, "Kitchen", Weight::regular, Align::right}}};
    auto const boxes = ask("pdftotext -bbox FILE -", pdf({page}), "a.pdf").out;
    auto const found = [&](std::string const& word) {
        std::smatch m;
        REQUIRE(std::regex_search(
            boxes, m,
            std::regex("xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">" + word)));
        return std::array{std::stod(m[1]), std::stod(m[2]), std::stod(m[3]), std::stod(m[4])};
    };
    constexpr double mm = 25.4 / 72;
    auto const left = found("Refrigerator"), right = found("Kitchen");
    CHECK(left[0] * mm == Approx(20).margin(0.05));
    CHECK((left[2] - left[0]) * mm == Approx(fonts().width("Refrigerator", 2.5, Weight::bold)).margin(0.05));
    CHECK(right[2] * mm == Approx(200).margin(0.05));
    CHECK((right[2] - right[0]) * mm == Approx(fonts().width("Kitchen", 3.9, Weight::regular)).margin(0.05));
    CHECK(left[1] * mm < 50); // its box holds the baseline
    CHECK(left[3] * mm > 50);
}

TEST_CASE("svg: well formed, and rendered by another program", "[draw][svg]") {
    std::string const bytes = draw_svg(page_of(hard_names()), fonts());
    CHECK(ask("xmllint --noout FILE", bytes, "a.svg").status == 0);
    auto const rendered = ask("rsvg-convert FILE > /dev/null", bytes, "a.svg");
    CAPTURE(rendered.out);
    CHECK(rendered.status == 0);
    CHECK_THAT(bytes, Contains("width=\"215.9mm\" height=\"279.4mm\""));
}

TEST_CASE("svg: another program's picture of it is the picture that Cairo draws", "[draw][svg]") {
    Page const page = page_of(hard_names());
    auto const rendered = ask("rsvg-convert -d 100 -p 100 FILE", draw_svg(page, fonts()), "a.svg").out;
    Picture const theirs = read_png(rendered), ours = read_png(draw_png(page, fonts(), 100));
    REQUIRE(std::abs(theirs.width - ours.width) <= 1);
    REQUIRE(std::abs(theirs.height - ours.height) <= 1);
    int different = 0, ink = 0;
    for (int y = 0; y < std::min(theirs.height, ours.height); ++y)
        for (int x = 0; x < std::min(theirs.width, ours.width); ++x) {
            ink += ours.at(x, y) < 128;
            different += std::abs(theirs.at(x, y) - ours.at(x, y)) > 128;
        }
    CAPTURE(different, ink);
    CHECK(ink > 3000);
    // Boxes for letters that no typeface has look different, and so do the edges of emoji.
    CHECK(different < ink / 20);
}

TEST_CASE("png: has the size of the page", "[draw][png]") {
    std::string const bytes = draw_png(page_of({"Range"}), fonts(), 100);
    REQUIRE(bytes.substr(1, 3) == "PNG");
    auto const number = [&](std::size_t at) { // big endian
        unsigned n = 0;
        for (std::size_t i = 0; i < 4; ++i) n = n << 8 | static_cast<unsigned char>(bytes[at + i]);
        return n;
    };
    CHECK(number(16) == 850);  // 8.5 in
    CHECK(number(20) == 1100); // 11 in
    // So that it prints at real size: 100 dots per inch are 3937 per metre.
    REQUIRE(bytes.substr(37, 4) == "pHYs");
    CHECK(number(41) == 3937);
    CHECK(number(45) == 3937);
    auto const sums = ask("python3 -c 'import sys, zlib\n"
                          "b = open(sys.argv[1], \"rb\").read(); at = 8\n"
                          "while at < len(b):\n"
                          "    n = int.from_bytes(b[at:at+4], \"big\")\n"
                          "    assert zlib.crc32(b[at+4:at+8+n]) == int.from_bytes(b[at+8+n:at+12+n], \"big\")\n"
                          "    at += 12 + n' FILE",
                          bytes, "a.png");
    CAPTURE(sums.out);
    CHECK(sums.status == 0);
}

TEST_CASE("the same page gives the same bytes, whatever was drawn before", "[draw]") {
    std::vector<Page> const pages{page_of(hard_names()), page_of({"Range"})};
    auto const first = pdf(pages);
    auto const first_svg = draw_svg(pages[0], fonts()), first_png = draw_png(pages[0], fonts(), 72);
    pdf({page_of({"Quite another page", "Élévateur", kHebrew, kEmoji})});
    draw_svg(page_of({"Quite another page", kEmoji}), fonts());
    CHECK(pdf(pages) == first);
    CHECK(draw_svg(pages[0], fonts()) == first_svg);
    CHECK(draw_png(pages[0], fonts(), 72) == first_png);
    Fonts const others(in_sources("fonts"));
    CHECK(draw_pdf(pages, {"Panel directory", "2026-05-02"}, others) == first);
    CHECK(draw_svg(pages[0], others) == first_svg);
}

TEST_CASE("a job without a date still gives the same bytes", "[draw][pdf]") {
    auto const bytes = draw_pdf({page_of({"Range"})}, {"", ""}, fonts());
    CHECK(draw_pdf({page_of({"Range"})}, {"", ""}, fonts()) == bytes);
    CHECK(ask("qpdf --check FILE", bytes, "a.pdf").status == 0);
}

TEST_CASE("any page draws", "[draw]") {
    Mm const nan = std::numeric_limits<double>::quiet_NaN();
    std::string const long_words(3000, 'w');
    std::vector<Page> const pages{
        {},
        {-5, 1e300, {}},
        {nan, nan, {}},
        {100, 100, {Text{10, 10, 0, "nothing"}, Text{10, 10, -3, "less"}, Text{10, 10, 2, ""}}},
        {100, 100, {Text{10, 10, 2, "\xff\xfe broken \x01\n"}, Text{10, 20, 2, long_words}}},
        {100,
         100,
         {Box{10, 10, -5, -5}, Box{10, 10, 0, 0, 0}, Line{5, 5, 5, 5, 0},
          Box{10, 10, 20, 5, 0.5, kBlack, true, kWhite, 99}}}};
    for (std::size_t i = 0; i < pages.size(); ++i) {
        CAPTURE(i);
        CHECK(ask("qpdf --check FILE", pdf({pages[i]}), "a.pdf").status == 0);
        CHECK(ask("xmllint --noout FILE", draw_svg(pages[i], fonts()), "a.svg").status == 0);
        CHECK(draw_png(pages[i], fonts(), 30).substr(1, 3) == "PNG");
    }
    CHECK(pdf({}).starts_with("%PDF"));
    // A mark that is nowhere is a mistake of ours: no page is better than one that lacks it.
    Page const lost{100, 100, {Text{nan, nan, 2, "lost"}}};
    CHECK_THROWS_AS(pdf({lost}), Failure);
    CHECK_THROWS_AS(draw_svg(lost, fonts()), Failure);
    CHECK_THROWS_AS(draw_png(lost, fonts(), 30), Failure);
}
