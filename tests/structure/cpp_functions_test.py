import unittest
from pathlib import Path

from cpp_functions import functions
from cpp_text import bare, without_comments

FIXTURE = Path(__file__).parent / "fixtures" / "functions.cpp"


class Functions(unittest.TestCase):
    def test_finds_each_function_of_the_fixture_with_its_lines(self):
        found = [(each.line, each.lines) for each in functions(FIXTURE.read_text(encoding="utf-8"))]
        expected = [(23, 5), (28, 1), (30, 1), (32, 3), (35, 3), (43, 3), (50, 7), (58, 11), (70, 3), (82, 3), (87, 1), (90, 5)]
        self.assertEqual(found, expected)

    def test_names_what_it_found(self):
        self.assertEqual(functions("int f(int a)\n{\n}\n")[0].name, "int f(int a)")

    def test_a_class_a_namespace_and_a_table_are_no_functions(self):
        for text in (
            "namespace a::b {\n" + "int x;\n" * 70 + "}",
            "class A final : public B<C> {\n" + "int x;\n" * 70 + "};",
            "const std::map<int, int> table{\n" + "{1, 2},\n" * 70 + "};",
            "const Row rows[] = {\n" + "{f(1), 2},\n" * 70 + "};",
            "enum class E : int {\n" + "x,\n" * 70 + "};",
        ):
            with self.subTest(text[:20]):
                self.assertEqual(functions(text), [])

    def test_a_lambda_belongs_to_the_function_it_is_in(self):
        found = functions("void f() {\n  g([](int a) {\n    return a;\n  });\n}\n")
        self.assertEqual([each.lines for each in found], [5])

    def test_braces_in_texts_and_comments_do_not_count(self):
        found = functions('void f() {\n  a("}"); // }\n  b(\'}\'); /* } */\n  c(R"(})");\n}\nint g() { return 1\'0; }\n')
        self.assertEqual([each.lines for each in found], [5, 1])

    def test_a_directive_does_not_count(self):
        found = functions("#define A {\\\n {\nvoid f() {\n#if B\n#endif\n}\n")
        self.assertEqual([(each.line, each.lines) for each in found], [(3, 4)])


class Text(unittest.TestCase):
    def test_keeps_length_and_lines(self):
        text = FIXTURE.read_text(encoding="utf-8")
        for changed in (bare(text), without_comments(text)):
            self.assertEqual(len(changed), len(text))
            self.assertEqual(changed.count("\n"), text.count("\n"))

    def test_a_comment_mark_in_a_string_opens_no_comment(self):
        self.assertEqual(without_comments('a("//"); // b'), 'a("//");     ')


if __name__ == "__main__":
    unittest.main()
