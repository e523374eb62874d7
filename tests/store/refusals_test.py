"""docs/refusals-store.md has each refusal of record and store with its sentences, and none that the sources do not have."""

import re
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
DOCUMENT = (ROOT / "docs/refusals-store.md").read_text(encoding="utf-8")
REFUSAL = re.compile(r'(?:refuse\(|Error\{)\s*"([a-z_]+)"')
SENTENCE = re.compile(r'SHIMWRIGHT_TEXT\(\s*"\w+",\s*((?:"(?:[^"\\]|\\.)*"\s*)+)\)')


def refusals(layer):
    """Sentences by code, as the sources have them."""
    found = {}
    for path in sorted((ROOT / "src" / layer).rglob("*.cpp")):
        text = path.read_text(encoding="utf-8")
        for refusal in REFUSAL.finditer(text):
            sentence = SENTENCE.search(text, refusal.end())
            words = "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', sentence.group(1)))
            found.setdefault(refusal.group(1), set()).add(words)
    return found


class Refusals(unittest.TestCase):
    def test_the_document_is_that_of_the_sources(self):
        for layer in ("record", "store"):
            part = DOCUMENT.split(f"\n## `{layer}`\n")[1].split("\n## ")[0]
            rows = dict(re.findall(r"^\| `([a-z_]+)` \| (.+) \|$", part, re.MULTILINE))
            listed = {code: set(sentences.split(" / ")) for code, sentences in rows.items()}
            self.assertGreater(len(listed), 10)
            self.assertEqual(listed, refusals(layer))


if __name__ == "__main__":
    unittest.main()
