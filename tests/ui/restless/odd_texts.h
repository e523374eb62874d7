#pragma once

#include <vector>

#include <QString>

/// What a person may paste, by intent or not, and what belongs into a field.
namespace shimwright::test {

inline std::vector<QString> odd_texts() {
  return {QString(100'000, QLatin1Char('x')),
          QString(3000, QLatin1Char('7')),
          QStringLiteral("0") + QChar(0) + QStringLiteral(" 1.65"),
          QString::fromUtf8("\u202Eright to left\u202C \u2066 apart \u2069"),
          QString::fromUtf8("👩‍🔧🔩⚙️ 1,65"),
          QStringLiteral("'; DROP TABLE entry; --"),
          QStringLiteral("%s%n%1%2{0}{1}\\"),
          QStringLiteral("<b>bold</b><img src=\"file:///nowhere.png\">"),
          QString::fromUtf8("\u0301\u0301\u0301 ﷽ \uFEFF\u200B"),
          QStringLiteral("one\ntwo\r\nthree\tfour"),
          QStringLiteral("-0"),
          QStringLiteral("1e309"),
          QStringLiteral("99999999999999999999"),
          QStringLiteral("../../planted"),
          QString(QChar(0xD800)) + QStringLiteral("half a pair")};
}

inline std::vector<QString> fitting_texts() {
  return {QStringLiteral("TESTVN009TA030417"),
          QStringLiteral("TESTVN117TB118822"),
          QStringLiteral("0,93"),
          QStringLiteral("1.65"),
          QStringLiteral("0.62 mm"),
          QStringLiteral("9.8 Nm"),
          QStringLiteral("148210"),
          QStringLiteral("4711"),
          QStringLiteral("0815"),
          QStringLiteral("2026-11-30"),
          QStringLiteral("D7-20931"),
          QStringLiteral("waits for a part"),
          QStringLiteral("+0,05"),
          QStringLiteral("12.6 V")};
}

}  // namespace shimwright::test
