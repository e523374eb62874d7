import unittest

from machine_paths import faults
from sample_tree import TreeTest

# In two parts, or this file would be at fault itself.
SLASH = "/"


class MachinePaths(TreeTest):
    def test_a_path_of_one_machine(self):
        for text in (
            f"see {SLASH}home/someone/project",
            f'open("{SLASH}work/main/data")',
            f"{SLASH}tmp/build-x",
            f"C:{chr(92)}Users{chr(92)}someone",
            f"..{SLASH}shared/vectors",
        ):
            for name in ("src/a/a.cpp", "README.md", ".ci/run", "docs/a.md", "data/a.json"):
                with self.subTest(name + " " + text):
                    self.assert_one_fault(faults(self.tree({name: "\n" + text})), f"{name}:2")

    def test_what_only_looks_like_one(self):
        for text in (
            f"data{SLASH}work/sheet",
            f"https://example.org{SLASH}home/a",
            f"${{TMPDIR:-{SLASH}tmp}}/x",
            "km/h",
            "/usr/share/fonts/a",
        ):
            with self.subTest(text):
                self.assertEqual(faults(self.tree({"docs/a.md": text})), [])


if __name__ == "__main__":
    unittest.main()
