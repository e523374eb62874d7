"""Signs a demonstration job as a person would, and verifies it with our program and without it."""
import contextlib
import json
import pathlib
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile

import program
from program import DEMO, SOURCE, run


class Seal(program.Bench):
    """Keys are derived from PINs as in a workshop, which takes its time: one job is signed once and copied."""

    @classmethod
    def setUpClass(cls):
        cls.kept = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.kept.cleanup)
        status, out, err = run("replay", DEMO[0], "--store", pathlib.Path(cls.kept.name) / "workshop.shimwright")
        assert status == 0, err
        cls.job = json.loads(out[-1])["job"]
        cls.signers = [c["by"] for c in program.script(DEMO[0])["commands"] if c["command"] == "sign"]
        cls.sealed = None

    def setUp(self):
        super().setUp()
        shutil.copytree(self.kept.name, self.folder, dirs_exist_ok=True)

    def seal(self):
        if Seal.sealed is None:
            Seal.sealed = tempfile.TemporaryDirectory()
            self.addClassCleanup(Seal.sealed.cleanup)
            Seal.answer = self.seal_anew()
            shutil.copytree(self.folder, Seal.sealed.name, dirs_exist_ok=True)
        else:
            shutil.copytree(Seal.sealed.name, self.folder, dirs_exist_ok=True)
        file = pathlib.Path(Seal.answer["file"]).name
        return {**Seal.answer, "file": str(self.folder / "backup" / file)}

    def seal_anew(self):
        pins = ""
        for number, initials in enumerate(self.signers):
            status, out, err = run("pin", "--store", self.store, "--person", initials, text=f"471{number}\n")
            self.assertEqual(status, 0, err)
            (self.folder / f"{initials}.pem").write_text("\n".join(out) + "\n", encoding="ascii")
            pins += f"471{number}\n"
        status, out, err = run("sign", self.job, "--store", self.store, "--person", self.signers[0], "--folder",
                               self.folder / "backup", text=pins)
        self.assertEqual(status, 0, err)
        return json.loads(out[0])

    def verify(self, *words):
        status, out, err = run("verify", *words)
        self.assertEqual(err, [])
        self.assertEqual(len(out), 1)
        return status, out[0]

    def test_a_sealed_job_is_whole_and_ours(self):
        self.assertEqual(self.verify("--store", self.store, "--job", self.job)[0], 1)
        sealed = self.seal()
        self.assertRegex(sealed["seal"], r"^([0-9A-Z]{4}-){4}[0-9A-Z]{4}$")
        self.assertEqual(self.verify("--store", self.store, "--job", self.job), (0, "whole and ours"))
        self.assertEqual(self.verify(sealed["file"], "--store", self.store), (0, "whole and ours"))
        keys = self.folder / "keys.pem"
        keys.write_text("".join((self.folder / f"{each}.pem").read_text() for each in self.signers))
        status, out, err = run("verify", sealed["file"], "--key", keys)
        self.assertEqual((status, out[0], err), (0, "whole and ours", []))
        # A key from a file is bound to nobody: who is said to have signed with it is told.
        self.assertEqual(len(out), 1 + len(self.signers))
        for line in out[1:]:
            self.assertRegex(line, r"^(technician|checker) .*: key [0-9a-f]{64}$")
        status, line = self.verify(sealed["file"])
        self.assertEqual(status, 1)
        self.assertIn("a key that is not known here", line)

    def test_a_record_changed_with_its_frozen_bytes_is_not_printed_as_sealed(self):
        self.seal()
        words = ["record", self.job, "--store", self.store, "--pdf", self.folder / "out.pdf"]
        self.assertEqual(run(*words), (0, [], []))
        with contextlib.closing(sqlite3.connect(self.store)) as store:
            triggers = store.execute("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' AND name IN "
                                     "('entry_is_not_changed', 'seal_is_not_changed')").fetchall()
            self.assertEqual(len(triggers), 2)
            for name, _ in triggers:
                store.execute(f"DROP TRIGGER {name}")
            for table, column in (("entry", "body"), ("seal", "record")):
                store.execute(f"UPDATE {table} SET {column} = CAST(replace(CAST({column} AS TEXT), 'TESTVN', 'TESTWN') "
                              "AS BLOB)")
            for _, sql in triggers:
                store.execute(sql)
            store.commit()
        status, out, err = run(*words)
        self.assertEqual((status, out), (1, []))
        self.assertEqual(len(err), 1)
        self.assertIn("changed after it was signed", err[0])
        text = subprocess.run(["pdftotext", self.folder / "out.pdf", "-"], capture_output=True, text=True, check=True)
        self.assertIn("does not hold", text.stdout)

    def test_the_code_on_paper_is_read_and_shows_what_was_signed(self):
        sealed = self.seal()
        code = json.loads(pathlib.Path(sealed["file"]).read_text(encoding="utf-8"))["code"]
        status, line = self.verify("--store", self.store, "--code", code)
        self.assertEqual(status, 0)
        self.assertRegex(line, r"^whole and ours: vehicle \S+, job \S+, lower \S+ at 0\.\d+ mm, upper \S+ at 0\.\d+ mm, ")
        self.assertTrue(line.endswith(sealed["seal"]))
        changed = code[:-1] + ("8" if code[-1] == "7" else "7")
        status, line = self.verify("--store", self.store, "--code", changed)
        self.assertEqual((status, line), (1, "code: This code is not as it was printed: it was changed."))
        status, line = self.verify("--store", self.store, "--code", "2041")
        self.assertEqual(status, 1)
        self.refused("verify", "--code", code)
        self.refused("verify", "--store", self.store, "--code", code, "--job", self.job)

    def test_a_camera_reads_the_code_off_the_printed_page(self):
        sealed = self.seal()
        code = json.loads(pathlib.Path(sealed["file"]).read_text(encoding="utf-8"))["code"]
        paper = self.folder / "record.pdf"
        status, _, err = run("record", self.job, "--store", self.store, "--pdf", paper)
        self.assertEqual(status, 0, err)
        # As a telephone held over the sheet sees it: coarse, and a little askew.
        subprocess.run(["pdftoppm", "-r", "150", "-gray", "-png", paper, self.folder / "page"], check=True)
        seen = [line for page in sorted(self.folder.glob("page-*.png"))
                for line in subprocess.run(["zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", page],
                                           capture_output=True, text=True).stdout.splitlines()]
        self.assertEqual(seen, [code])

    def test_addenda_are_signed_and_a_wrong_pin_adds_nothing(self):
        sealed = self.seal()
        words = ["addendum", self.job, "--store", self.store, "--person", self.signers[0], "--reason", "found later",
                 "--text", "0.1 l of oil topped up", "--folder", self.folder / "backup"]
        self.assertIn("not the PIN", self.refused(*words, text="0000\n"))
        status, out, err = run(*words, text="4710\n")
        self.assertEqual(status, 0, err)
        self.assertEqual(json.loads(out[0])["file"], sealed["file"])
        self.assertEqual(self.verify(sealed["file"], "--store", self.store), (0, "whole and ours"))
        self.assertEqual(self.verify("--store", self.store, "--job", self.job), (0, "whole and ours"))

    def test_a_changed_file_is_named_where_it_was_changed(self):
        file = pathlib.Path(self.seal()["file"])
        whole = file.read_bytes()
        document = json.loads(whole)
        document["record"]["entries"] += 1
        file.write_text(json.dumps(document, sort_keys=True, separators=(",", ":"), ensure_ascii=False) + "\n",
                        encoding="utf-8")
        status, line = self.verify(file, "--store", self.store)
        self.assertEqual((status, line[:8]), (1, "record: "))
        file.write_bytes(whole[:-1])
        status, line = self.verify(file, "--store", self.store)
        self.assertEqual((status, line[:6]), (1, "file: "))

    def test_the_way_of_the_document_finds_what_ours_finds(self):
        """The lines stand in docs/formats/signed-record.md and are run as they stand there."""
        text = (SOURCE / "docs/formats/signed-record.md").read_text(encoding="utf-8")
        script = self.folder / "verify.py"
        script.write_text(re.search(r"```python\n(.*?)```", text, re.DOTALL).group(1), encoding="utf-8")
        file = pathlib.Path(self.seal()["file"])
        pem = self.folder / f"{self.signers[0]}.pem"

        def own_way():
            return subprocess.run([sys.executable, script, file, pem], cwd=self.folder, capture_output=True,
                                  check=False).returncode

        self.assertEqual(own_way(), 0)
        whole = file.read_text(encoding="utf-8")
        for old, new in [('"demonstration":true', '"demonstration":false'), ('"role":"technician"', '"role":"checker"')]:
            self.assertIn(old, whole)
            file.write_text(whole.replace(old, new), encoding="utf-8")
            self.assertNotEqual(own_way(), 0)

    def test_the_print_made_on_sealing_is_no_reprint(self):
        for number, initials in enumerate(self.signers):
            run("pin", "--store", self.store, "--person", initials, text=f"471{number}\n")
        pdf = self.folder / "first.pdf"
        status, _, err = run("sign", self.job, "--store", self.store, "--person", self.signers[0], "--pdf", pdf,
                             text="4710\n4711\n")
        self.assertEqual((status, err), (0, []))
        text = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, text=True, check=True).stdout
        self.assertIn("Sealed ", text)
        self.assertNotIn("eprint", text)

    def test_what_was_signed_stands_where_its_file_cannot_be_written(self):
        for number, initials in enumerate(self.signers):
            run("pin", "--store", self.store, "--person", initials, text=f"471{number}\n")
        (self.folder / "blocked").write_text("")
        status, out, err = run("sign", self.job, "--store", self.store, "--person", self.signers[0], "--folder",
                               self.folder / "blocked", text="4710\n4711\n")
        self.assertEqual((status, len(out), len(err)), (1, 1, 1))
        self.assertNotIn("file", json.loads(out[0]))
        self.assertEqual(self.verify("--store", self.store, "--job", self.job), (0, "whole and ours"))

    def test_a_pin_is_changed_and_a_key_ended(self):
        who = ["--store", self.store, "--person", self.signers[0]]
        key = run("pin", *who, text="4710\n")[1]
        self.assertIn("not the PIN", self.refused("pin", *who, "--change", text="0000\n5555\n"))
        self.assertEqual(run("pin", *who, "--change", text="4710\n5555\n"), (0, key, []))
        self.assertIn("not the PIN", self.refused("pin", *who, "--change", text="4710\n6666\n"))
        pem = self.folder / "key.pem"
        pem.write_text("\n".join(key) + "\n", encoding="ascii")
        self.refused("pin", *who, "--end", pem)
        self.refused("pin", *who, "--end", pem, "--from", "yesterday")
        self.refused("pin", *who, "--end", "0" * 64, "--from", "2026-01-01")
        self.refused("pin", *who, "--change", "--forgotten", text="1\n")
        self.assertEqual(run("pin", *who, "--end", pem, "--from", "2020-01-01"), (0, key, []))
        run("pin", "--store", self.store, "--person", self.signers[1], text="4711\n")
        self.refused("sign", self.job, *who, text="5555\n4711\n")

    def test_signing_needs_what_is_there(self):
        who = ["--store", self.store, "--person", self.signers[0]]
        self.assertIn("not in the workshop", self.refused("sign", self.job, "--store", self.store, "--person", "NOBODY",
                                                          text="1\n"))
        self.assertIn("no PIN yet", self.refused("sign", self.job, *who, text="1234\n1234\n"))
        self.assertIn("4 to 12 digits", self.refused("pin", *who, text="12\n"))
        self.refused("verify")
        self.refused("sign", self.job, "--store", self.folder / "none", "--person", "MK", text="1\n")
        self.assertFalse((self.folder / "none").exists())


if __name__ == "__main__":
    program.main()
