#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "fuzz_target.h"

/// Goes once through every file of the folder; no file at all is a fault, or a moved folder would pass unseen.
int main(int count, char** arguments) {
  const std::vector<std::string> words(arguments, arguments + count);
  std::size_t replayed = 0;
  if (words.size() == 2 && std::filesystem::is_directory(words[1])) {
    for (const auto& seed : std::filesystem::directory_iterator(words[1])) {
      std::ifstream file(seed.path(), std::ios::binary);
      const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
      LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
      ++replayed;
    }
  }
  std::printf("%zu seeds replayed\n", replayed);
  return replayed > 0 ? 0 : 1;
}
