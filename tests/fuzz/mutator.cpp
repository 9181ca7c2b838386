// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// libFuzzer's hooks, of files with the keys that the target names.
#include "fuzz/mutator.h"
#include "fuzz/mutate.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace {

std::string_view text_of(std::uint8_t const* data, std::size_t size) {
    return {reinterpret_cast<char const*>(data), size};
}

// The size; 0 when it does not fit.
std::size_t put(std::string const& text, std::uint8_t* out, std::size_t most) {
    if (text.size() > most) return 0;
    std::ranges::copy(text, out);
    return text.size();
}

} // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed) {
    fuzz::Dice dice(seed);
    if (!dice.once_in(4))
        if (auto const made = put(fuzz::changed(text_of(data, size), dice), data, most)) return made;
    return LLVMFuzzerMutate(data, size, most);
}

extern "C" std::size_t LLVMFuzzerCustomCrossOver(std::uint8_t const* a, std::size_t a_size, std::uint8_t const* b,
                                                 std::size_t b_size, std::uint8_t* out, std::size_t most,
                                                 unsigned seed) {
    fuzz::Dice dice(seed);
    return put(fuzz::spliced(text_of(a, a_size), text_of(b, b_size), dice), out, most);
}
