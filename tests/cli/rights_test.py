"""Whole jobs by the command line under a mask that hides nothing: what it leaves is for its owner alone, no PIN is in it, and
nothing is half made, after success, a refusal, or a kill."""
import base64
import json
import os
import signal
import stat
import subprocess

import program
from program import DEMO, Bench, main

PINS = {"MK": "730518294617", "RT": "918273645501"}
LEFT_BEHIND = (".unfinished", ".part", ".restored", "-journal")


def spellings(secret):
    """A text as it may lie somewhere: as it is, in hexadecimal, in base64 from each place it may begin at."""
    plain = secret.encode()
    found = [plain, plain.hex().encode(), plain.hex().upper().encode(), plain.decode().encode("utf-16-le")]
    for before in range(3):
        coded = base64.b64encode(b"\0" * before + plain).rstrip(b"=")
        found.append(coded[4 if before else 0 : -2])
    return [each for each in found if len(each) >= 10]


class Rights(Bench):
    def setUp(self):
        super().setUp()
        self.temporary = self.folder / "temporary"
        self.temporary.mkdir(mode=0o700)
        self.work = self.folder / "work"
        self.work.mkdir(mode=0o700)
        self.store = self.work / "shop" / "workshop.shimwright"
        self.session = self.folder / "session"
        self.session.mkdir(mode=0o700)
        self.told = b""

    def surroundings(self):
        """Where a session has its own folder, the toolkit makes none."""
        return dict(os.environ, TMPDIR=str(self.temporary), XDG_RUNTIME_DIR=str(self.session))

    def call(self, *words, text=None):
        done = subprocess.run(
            [program.PROGRAM, *map(str, words)],
            input=None if text is None else text.encode(),
            capture_output=True,
            check=False,
            env=self.surroundings(),
            preexec_fn=lambda: os.umask(0),
        )
        self.told += done.stdout + done.stderr
        return done.returncode, done.stdout.decode().splitlines()

    def do_whole_job(self):
        """Every file the command line writes."""
        work = self.work
        status, lines = self.call("replay", DEMO[0], "--store", self.store, "--record", work / "replay.pdf")
        self.assertEqual(status, 0, self.told)
        job = json.loads(lines[-1])["job"]
        signers = [each["by"] for each in program.script(DEMO[0])["commands"] if each["command"] == "sign"]
        pins = [PINS.get(initials, "564738291055") for initials in signers]
        for initials, pin in zip(signers, pins):
            self.assertEqual(self.call("pin", "--store", self.store, "--person", initials, text=pin + "\n")[0], 0, self.told)
        sign = ["sign", job, "--store", self.store, "--person", signers[0], "--folder", work / "signed", "--pdf", work / "sealed.pdf"]
        self.assertEqual(self.call(*sign, text="".join(pin + "\n" for pin in pins))[0], 0, self.told)
        wrong = ["addendum", job, "--store", self.store, "--person", signers[0], "--reason", "r", "--text", "t"]
        self.assertEqual(self.call(*wrong, text="1" + pins[0][1:] + "\n")[0], 2)
        self.assertEqual(self.call(*wrong, "--folder", work / "signed", text=pins[0] + "\n")[0], 0, self.told)
        for words in (
            ("record", job, "--pdf", work / "record.pdf", "--json", work / "record.json"),
            ("backup", work / "backups" / "monday.shimwright"),
            ("export", job, work / "job.jsonl"),
            ("check",),
        ):
            self.assertEqual(self.call(*words, "--store", self.store)[0], 0, self.told)
        other = work / "other" / "workshop.shimwright"
        self.assertEqual(self.call("make-demo", "--jobs", 2, "--store", other)[0], 0, self.told)
        self.assertEqual(self.call("import", work / "job.jsonl", "--store", other)[0], 0, self.told)
        self.assertEqual(self.call("restore", work / "backups" / "monday.shimwright", "--store", self.store)[0], 0, self.told)
        return pins

    def everything(self):
        return sorted(self.work.rglob("*"))

    def assert_nothing_left_behind(self):
        self.assertEqual(list(self.temporary.rglob("*")), [])
        half_made = [path for path in self.everything() if path.name.endswith(LEFT_BEHIND)]
        self.assertEqual(half_made, [])

    def assert_for_their_owner_alone(self):
        names = {path.suffix for path in self.everything()}
        self.assertLessEqual({".pdf", ".json", ".jsonl", ".shimwright", ".lock"}, names)
        self.assertTrue(any("photos" in path.parts for path in self.everything()))
        for path in self.everything():
            rights = stat.S_IMODE(path.lstat().st_mode)
            self.assertEqual(rights, 0o700 if path.is_dir() else 0o600, f"{path}: {rights:o}")

    def assert_nowhere(self, pins):
        said = {"what the program said": self.told}
        said.update({str(path): path.read_bytes() for path in self.everything() if path.is_file()})
        self.assertGreater(len(said), 10)
        for name, content in said.items():
            for pin in pins:
                for spelling in spellings(pin):
                    self.assertNotIn(spelling, content, f"{name} holds a PIN as {spelling}")

    def test_what_a_whole_job_leaves_is_for_its_owner_alone_and_holds_no_pin(self):
        pins = self.do_whole_job()
        self.assert_for_their_owner_alone()
        self.assert_nothing_left_behind()
        self.assert_nowhere(pins)

    def test_a_refusal_leaves_nothing(self):
        self.assertEqual(self.call("make-demo", "--jobs", 1, "--store", self.store)[0], 0, self.told)
        before = self.everything()
        # Looking at a store leaves SQLite's empty log beside it.
        of_looking = ("letter.txt", "workshop.shimwright-wal", "workshop.shimwright-shm")
        (self.work / "letter.txt").write_text("Dear Sir or Madam", encoding="ascii")
        for words in (
            ("backup", self.work / "letter.txt"),
            ("export", "none", self.work / "job.jsonl"),
            ("import", self.work / "letter.txt"),
            ("restore", self.work / "letter.txt"),
            ("record", "none", "--pdf", self.work / "record.pdf"),
            ("record", "1", "--pdf", self.work / "no" / "such" / "record.pdf"),
        ):
            self.assertNotEqual(self.call(*words, "--store", self.store)[0], 0, words)
        self.assertEqual([path for path in self.everything() if path.name not in of_looking], before)
        self.assert_nothing_left_behind()

    def test_what_a_kill_leaves_is_taken_away_by_the_next(self):
        self.assertEqual(self.call("make-demo", "--jobs", 20, "--store", self.store)[0], 0, self.told)
        out = self.work / "backups" / "monday.shimwright"
        for _ in range(4):
            running = subprocess.Popen(
                [program.PROGRAM, "backup", str(out), "--store", str(self.store)],
                stdout=subprocess.PIPE,
                stderr=subprocess.PIPE,
                env=self.surroundings(),
            )
            while running.poll() is None and not list(self.work.rglob("*.unfinished")):
                pass
            running.send_signal(signal.SIGKILL)
            running.communicate()
        for path in self.everything():
            self.assertEqual(stat.S_IMODE(path.lstat().st_mode) & 0o077, 0, path)
        self.assertEqual(self.call("backup", out, "--store", self.store)[0], 0, self.told)
        self.assert_nothing_left_behind()


main()
