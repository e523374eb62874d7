"""docs/refusals.md is that of the sources, each refusal says what to do, and a test provokes each."""

import re
import tempfile
import unittest
from pathlib import Path

import refusals

TEST_FILES = (".cpp", ".h", ".py", ".json")


def texts_of_tests():
    skipped = {"refusals.py", "remedies.txt"}
    paths = [path for path in (refusals.ROOT / "tests").rglob("*") if path.suffix in TEST_FILES and path.name not in skipped]
    return "\n".join(path.read_text(encoding="utf-8", errors="replace") for path in sorted(paths))


class Refusals(unittest.TestCase):
    def setUp(self):
        self.layers = refusals.refusals()
        self.known = refusals.remedies()

    def test_the_document_is_that_of_the_sources(self):
        written = refusals.DOCUMENT.read_text(encoding="utf-8")
        self.assertEqual(
            written.splitlines(),
            refusals.document(self.layers, self.known).splitlines(),
            "write it anew with python3 tests/structure/refusals.py --write",
        )

    def test_each_has_a_sentence_and_says_what_to_do(self):
        for layer, codes in self.layers.items():
            for code, sentences in codes.items():
                self.assertTrue(sentences, f"{layer}: {code} has no sentence")
                self.assertTrue(
                    refusals.remedy_of(layer, code, sentences, self.known),
                    f"{layer}: {code} does not say what to do; write it in {refusals.REMEDIES.name}",
                )

    def test_every_sentence_of_the_layers_is_found(self):
        self.assertGreater(sum(len(codes) for codes in self.layers.values()), 200)
        for layer in ("quantity", "json", "shim", "vehicle", "sheet", "job", "record", "store", "cli", "window"):
            self.assertTrue(self.layers[layer], layer)

    def test_no_remedy_is_left_over(self):
        for layer, code in self.known:
            self.assertIn(code, self.layers.get(layer, {}), f"{refusals.REMEDIES.name}: {layer} {code}")

    def test_each_is_provoked_by_a_test(self):
        tests = texts_of_tests()
        codes = {code: layer for layer, codes in self.layers.items() for code in codes}
        missing = [f"{layer}: {code}" for code, layer in codes.items() if not re.search(rf'"{code}[" ]', tests)]
        self.assertEqual(missing, [])


class OfAFile(unittest.TestCase):
    def found(self, text, path="src/shim/x.cpp"):
        return refusals.refusals_in(path, text)

    def test_a_refusal_is_its_code_and_its_sentence(self):
        text = 'return refuse("no_hand", place(1, "a"), SHIMWRIGHT_TEXT("shim", "No {0}: "\n "take \\"it\\"."), {one});'
        self.assertEqual(self.found(text), [("no_hand", 'No {0}: take "it".')])

    def test_two_ways_to_say_it_are_two(self):
        text = 'x ? refuse("a_b", "", SHIMWRIGHT_TEXT("shim", "One.")) : refuse("a_b", "", SHIMWRIGHT_TEXT("shim", "Two."))'
        self.assertEqual(self.found(text), [("a_b", "One."), ("a_b", "Two.")])

    def test_a_code_without_a_sentence_is_seen(self):
        self.assertEqual(self.found('refuse("bare", "", sentence)'), [("bare", "")])

    def test_what_stands_apart_belongs_to_the_code_of_its_file(self):
        text = 'const char* s = SHIMWRIGHT_TEXT("json", "Odd."); refuse("no_json", "", s);'
        self.assertEqual(self.found(text, "src/json/scanner.cpp"), [("no_json", ""), ("no_json", "Odd.")])

    def test_what_to_do_follows_the_last_colon(self):
        self.assertEqual(refusals.remedy_in("It is gone; choose another."), "choose another")
        self.assertEqual(refusals.remedy_in("It is {0}: {1}"), "")

    def test_a_layer_is_read_from_its_folder(self):
        with tempfile.TemporaryDirectory() as folder:
            source = Path(folder) / "src/shim/one.cpp"
            source.parent.mkdir(parents=True)
            source.write_text('refuse("gone", "", SHIMWRIGHT_TEXT("shim", "It is gone: look."));', encoding="utf-8")
            self.assertEqual(refusals.refusals(Path(folder))["shim"], {"gone": ["It is gone: look."]})


if __name__ == "__main__":
    unittest.main()
