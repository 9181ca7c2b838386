// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/png_bytes.h"

#include "units/failure.h"

#include <array>
#include <cmath>
#include <cstring>
#include <vector>

#include <zlib.h>

namespace legwork {

namespace {

// Two and not six: a tenth of the size, for more than half of the time.
constexpr int kEffort = 2;

std::uint32_t pixel(Pixels const& p, int x, int y) {
    std::uint32_t value = 0;
    std::memcpy(&value, p.bytes + std::ptrdiff_t{y} * p.stride + std::ptrdiff_t{x} * 4, sizeof value);
    return value & 0xFFFFFF;
}

bool is_grey(Pixels const& p) {
    for (int y = 0; y < p.height; ++y)
        for (int x = 0; x < p.width; ++x)
            if (auto const value = pixel(p, x, y); value != (value & 0xFF) * 0x010101U) return false;
    return true;
}

std::string big_endian(std::uint64_t n) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8) bytes += static_cast<char>(n >> shift & 0xFF);
    return bytes;
}

void add_chunk(std::string& png, std::string const& kind, std::string const& bytes) {
    auto const named = kind + bytes;
    auto const sum = ::crc32_z(0, reinterpret_cast<unsigned char const*>(named.data()), named.size());
    png += big_endian(bytes.size()) + named + big_endian(sum);
}

// One row: its filter (none) and its samples.
void fill(std::vector<unsigned char>& row, Pixels const& p, int y, bool grey) {
    std::size_t at = 1;
    for (int x = 0; x < p.width; ++x) {
        auto const value = pixel(p, x, y);
        if (!grey) {
            row[at++] = static_cast<unsigned char>(value >> 16);
            row[at++] = static_cast<unsigned char>(value >> 8);
        }
        row[at++] = static_cast<unsigned char>(value);
    }
}

// The stream that goes into the IDAT chunk.
class Deflated {
public:
    Deflated() {
        if (::deflateInit(&stream_, kEffort) != Z_OK) throw Failure("there is not enough memory to draw a picture");
    }
    ~Deflated() { ::deflateEnd(&stream_); }
    Deflated(Deflated const&) = delete;
    Deflated& operator=(Deflated const&) = delete;

    void add(std::vector<unsigned char>& row, int flush) {
        stream_.next_in = row.data();
        stream_.avail_in = static_cast<unsigned>(row.size());
        do {
            stream_.next_out = piece_.data();
            stream_.avail_out = static_cast<unsigned>(piece_.size());
            ::deflate(&stream_, flush);
            bytes_.append(reinterpret_cast<char const*>(piece_.data()), piece_.size() - stream_.avail_out);
        } while (stream_.avail_out == 0);
    }
    std::string const& bytes() const { return bytes_; }

private:
    z_stream stream_{};
    std::array<unsigned char, 65536> piece_{};
    std::string bytes_;
};

std::string image(Pixels const& p, bool grey) {
    Deflated deflated;
    std::vector<unsigned char> row(1 + static_cast<std::size_t>(p.width) * (grey ? 1 : 3));
    for (int y = 0; y < p.height; ++y) {
        fill(row, p, y, grey);
        deflated.add(row, y + 1 < p.height ? Z_NO_FLUSH : Z_FINISH);
    }
    return deflated.bytes();
}

} // namespace

std::string png_bytes(Pixels const& p, double dots_per_mm, std::string_view mark) {
    bool const grey = is_grey(p);
    std::string png("\x89PNG\r\n\x1a\n");
    add_chunk(png, "IHDR",
              big_endian(static_cast<std::uint64_t>(p.width)) + big_endian(static_cast<std::uint64_t>(p.height)) +
                  '\x08' + (grey ? '\0' : '\x02') + std::string(3, '\0'));
    auto const dots_per_metre = big_endian(static_cast<std::uint64_t>(std::lround(dots_per_mm * 1000)));
    add_chunk(png, "pHYs", dots_per_metre + dots_per_metre + '\x01');
    if (!mark.empty()) add_chunk(png, "tEXt", std::string("Comment") + '\0' + std::string(mark));
    add_chunk(png, "IDAT", image(p, grey));
    add_chunk(png, "IEND", "");
    return png;
}

} // namespace legwork
