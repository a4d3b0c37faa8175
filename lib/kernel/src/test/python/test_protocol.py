"""What every language kernel has to do: the checks of the public conformance suite, redone strictly, and more."""

import unittest

from kernel_client import KernelCase


class KernelInfo(KernelCase):
    def test_kernel_info(self):
        info = self.request("kernel_info")
        self.assertEqual("ok", info["status"])
        self.assertEqual("5", info["protocol_version"].split(".")[0])
        for field in ("implementation", "implementation_version", "banner", "help_links"):
            self.assertIn(field, info)
        language = info["language_info"]
        self.assertEqual("java", language["name"])
        self.assertEqual(".java", language["file_extension"])
        self.assertTrue(language["version"].split(".")[0].isdigit())
        self.assertEqual("text/x-java", language["mimetype"])
        self.assertEqual("java", language["pygments_lexer"])

    def test_kernel_info_on_control_while_busy(self):
        sleeping = self.send('System.out.println("running"); Thread.sleep(60_000);')
        self.await_text(sleeping, "running")
        message = self.client.session.msg("kernel_info_request", {})
        self.client.control_channel.send(message)
        reply = self.client.get_control_msg(timeout=30)
        self.assertEqual("ok", reply["content"]["status"])
        self.manager.interrupt_kernel()
        self.assertEqual("error", self.collect(sleeping).status)

    def test_comm_info(self):
        self.assertEqual({"status": "ok", "comms": {}}, self.request("comm_info"))

    def test_comm_open_for_an_unknown_target_is_closed(self):
        message = self.client.session.msg(
            "comm_open", {"comm_id": "c1", "target_name": "nobody", "data": {}})
        self.client.shell_channel.send(message)
        while True:
            published = self.client.get_iopub_msg(timeout=10)
            if published["msg_type"] == "comm_close":
                self.assertEqual("c1", published["content"]["comm_id"])
                break

    def test_message_with_a_wrong_signature_is_ignored(self):
        key = self.client.session.key
        self.client.session.key = b"not the key"
        self.client.kernel_info()
        self.client.session.key = key
        self.assertEqual("42", self.ok("6 * 7").result)

    def test_unknown_message_does_no_harm(self):
        self.client.shell_channel.send(self.client.session.msg("nonsense_request", {"x": 1}))
        self.assertEqual("42", self.ok("6 * 7").result)


class Execute(KernelCase):
    def test_stdout(self):
        run = self.ok('System.out.println("hello, world")')
        self.assertEqual("hello, world\n", run.text())
        self.assertEqual(["busy", "idle"], run.statuses)
        self.assertEqual("execute_input", run.published[0][0])
        self.assertEqual([], run.strays)

    def test_stderr(self):
        self.assertEqual("test\n", self.ok('System.err.println("test")').text("stderr"))

    def test_streams_keep_their_order(self):
        run = self.ok('System.out.print("a"); System.err.print("b"); System.out.print("c");')
        self.assertEqual(["a", "b", "c"], [content["text"] for content in run.contents("stream")])

    def test_formatted_and_raw_output(self):
        code = (
            'System.out.printf("%d-%s%n", 7, "ä"); System.out.write(new byte[] {(byte) 0xc3}, 0, 1); '
            'System.out.write(new byte[] {(byte) 0xa4, 10}, 0, 2); System.out.append("end").println(1.5);'
        )
        self.assertEqual("7-ä\nä\nend1.5\n", self.ok(code).text())

    def test_result(self):
        for code, result in (
            ("6 * 7", "42"),
            ('"text"', "text"),
            ("int a = 2;\nint b = 3;\na + b", "5"),
            ("List.of(1, 2)", "[1, 2]"),
            ("new int[][] {{1}, {2, 3}}", "[[1], [2, 3]]"),
            ("Optional.empty()", "Optional.empty"),
        ):
            with self.subTest(code):
                run = self.ok(code)
                self.assertEqual(result, run.result)
                self.assertEqual(run.reply["execution_count"], run.contents("execute_result")[0]["execution_count"])

    def test_no_result(self):
        for code in ("6 * 7;", "int q = 1;", "int r = 1", "", "// only a comment", "Object n = null; n", "void f() {}"):
            with self.subTest(code):
                self.assertIsNone(self.ok(code).result)

    def test_error(self):
        run = self.fails('throw new IllegalStateException("boo")')
        for content in (run.reply, run.contents("error")[0]):
            self.assertEqual("IllegalStateException", content["ename"])
            self.assertEqual("boo", content["evalue"])
            self.assertEqual("IllegalStateException: boo", content["traceback"][0])
        self.assertIn("execution_count", run.reply)
        self.assertEqual(1, len(run.contents("error")))

    def test_error_names_the_line_of_the_cell(self):
        run = self.fails("int zero = 0;\n\n// here\nint x = 1 / zero;")
        self.assertEqual("ArithmeticException: / by zero", run.reply["traceback"][0])
        self.assertIn("line 4:  ", run.reply["traceback"][1])
        shown = "\n".join(run.reply["traceback"])
        for wrapper in ("REPL", "JShell", "do_it", "jdk.internal", "EvalException"):
            self.assertNotIn(wrapper, shown)

    def test_error_names_the_cell_a_method_was_declared_in(self):
        count = self.ok("int half(int n) {\n    if (n > 1) {\n        return n / 0;\n    }\n    return n;\n}").reply[
            "execution_count"]
        trace = self.fails("half(4)").reply["traceback"]
        self.assertIn(f"cell [{count}], line 3:  return n / 0;", trace[1])

    def test_compile_error_has_line_and_caret(self):
        trace = self.fails('int fine = 1;\nString s = 5 + nowhere;').reply["traceback"]
        self.assertEqual("cannot find symbol: variable nowhere", trace[0])
        self.assertRegex(trace[1], r"cell \[\d+\], line 2:")
        self.assertEqual(trace[2].index("nowhere"), trace[3].index("^"))

    def test_cell_that_breaks_the_grammar_does_not_run_its_first_half(self):
        run = self.fails('System.out.println("half");\nint x = = 3;')
        self.assertEqual("", run.text())
        self.assertIn("line 2:", run.reply["traceback"][1])
        self.assertEqual("", self.fails('System.out.println("half");\nfor (int i = 0; i < 3; i++) {').text())

    def test_missing_semicolon_is_shown_where_it_is_missing(self):
        trace = self.fails('var sb = new StringBuilder();\nsb.append("x")\nsb.toString()').reply["traceback"]
        self.assertEqual("';' expected", trace[0])
        self.assertIn("line 2:", trace[1])

    def test_silent(self):
        before = self.ok("1").reply["execution_count"]
        run = self.run_cell('int hidden = 5; System.out.println("x"); hidden', silent=True)
        self.assertEqual("ok", run.status)
        self.assertEqual([], run.published)
        self.assertEqual(["busy", "idle"], run.statuses)
        failed = self.run_cell("int z = 1 / 0;", silent=True)
        self.assertEqual("error", failed.status)
        self.assertEqual([], failed.published)
        after = self.ok("hidden")
        self.assertEqual("5", after.result)
        self.assertEqual(before + 1, after.reply["execution_count"])

    def test_store_history(self):
        before = self.ok("1").reply["execution_count"]
        self.assertEqual("77777", self.ok("77777", store_history=False).result)
        self.assertEqual(before + 1, self.ok("2").reply["execution_count"])
        codes = [entry[2] for entry in self.request("history", hist_access_type="tail", n=2)["history"]]
        self.assertEqual(["1", "2"], codes)

    def test_user_expressions(self):
        self.ok("int ue = 20;")
        run = self.ok("1;", user_expressions={"double": "ue * 2", "broken": "nope", "thrown": "1 / (ue - 20)"})
        answers = run.reply["user_expressions"]
        self.assertEqual("ok", answers["double"]["status"])
        self.assertEqual("40", answers["double"]["data"]["text/plain"])
        self.assertIn("metadata", answers["double"])
        self.assertEqual("error", answers["broken"]["status"])
        self.assertEqual("ArithmeticException", answers["thrown"]["ename"])
        self.assertEqual([], run.contents("error"))

    def test_stop_on_error_aborts_what_is_queued(self):
        first = self.send("Thread.sleep(300); int bad = 1 / 0;")
        queued = [self.send(f"int aborted{i} = {i};") for i in range(3)]
        info = self.client.kernel_info()
        self.assertEqual("error", self.collect(first).status)
        for message in queued:
            run = self.collect(message)
            self.assertEqual("aborted", run.status)
            self.assertEqual([], run.published)
        self.assertEqual("ok", self.reply(info)["status"])
        self.fails("aborted0")
        self.assertEqual("3", self.ok("1 + 2").result)

    def test_without_stop_on_error_the_queue_goes_on(self):
        first = self.send("Thread.sleep(300); int bad2 = 1 / 0;", stop_on_error=False)
        second = self.send("int kept = 8; kept")
        self.assertEqual("error", self.collect(first).status)
        self.assertEqual("8", self.collect(second).result)

    def test_redefinition(self):
        self.ok("record Shoe(double depth) {}\nvar shoe = new Shoe(3000);\ndouble twice(double d) { return 2 * d; }")
        self.assertEqual("6000.0", self.ok("twice(shoe.depth())").result)
        # Running an unchanged declaration again keeps what depends on it.
        self.ok("record Shoe(double depth) {}")
        self.assertEqual("Shoe[depth=3000.0]", self.ok("shoe").result)
        changed = self.ok("record Shoe(double depth, String name) {}")
        self.assertIn("shoe", changed.text("stderr"))
        self.ok('var shoe = new Shoe(3100, "9 5/8");')
        self.assertEqual("Shoe[depth=3100.0, name=9 5/8]", self.ok("shoe").result)
        self.ok("double twice(double d) { return 20 * d; }")
        self.assertEqual("62000.0", self.ok("twice(shoe.depth())").result)
        self.ok('String shoe = "now text";')
        self.assertEqual("now text", self.ok("shoe").result)

    def test_forward_reference_between_methods(self):
        note = self.ok("int outer() { return inner() + 1; }")
        self.assertIn("outer cannot be used yet", note.text("stderr"))
        self.assertIn("inner()", self.fails("outer()").reply["evalue"])
        self.ok("int inner() { return 4; }")
        self.assertEqual("5", self.ok("outer()").result)

    def test_prints_after_the_end_stay_with_their_cell(self):
        code = 'new Thread(() -> { try { Thread.sleep(400); } catch (Exception e) {} System.out.println("late"); }).start();'
        first = self.send(code)
        self.assertEqual("", self.collect(first).text())
        second = self.ok('Thread.sleep(900); System.out.println("mine");')
        self.assertEqual("mine\n", second.text())
        self.assertEqual(
            [(first, "stream", {"name": "stdout", "text": "late\n"})],
            [stray for stray in second.strays if stray[1] == "stream"])

    def test_ten_thousand_lines(self):
        run = self.ok('for (int i = 0; i < 10_000; i++) { System.out.println("line " + i); }')
        self.assertEqual([f"line {i}" for i in range(10_000)], run.text().splitlines())
        self.assertLess(len(run.contents("stream")), 200)
        self.assertEqual([], run.strays)

    def test_lines_of_parallel_threads_arrive_whole(self):
        run = self.ok(
            'IntStream.range(0, 2_000).parallel().forEach(i -> System.out.println("line " + i));')
        self.assertEqual({f"line {i}" for i in range(2_000)}, set(run.text().splitlines()))


class Display(KernelCase):
    def test_display_data(self):
        run = self.ok('display(staunch.kernel.MimeBundle.html("<b>x</b>", "x"))')
        content = run.contents("display_data")[0]
        self.assertEqual({"text/html": "<b>x</b>", "text/plain": "x"}, content["data"])
        self.assertEqual({}, content["metadata"])
        self.assertIsNone(run.result)

    def test_image_result(self):
        code = "new java.awt.image.BufferedImage(4, 3, java.awt.image.BufferedImage.TYPE_INT_RGB)"
        data = self.ok(code).contents("execute_result")[0]["data"]
        self.assertTrue(data["image/png"].startswith("iVBORw0KGgo"))
        self.assertEqual("image, 4 × 3 px", data["text/plain"])

    def test_update_display(self):
        run = self.ok('var handle = display("one"); handle.update("two");')
        shown = run.contents("display_data")[0]
        updated = run.contents("update_display_data")[0]
        self.assertEqual("two", updated["data"]["text/plain"])
        self.assertEqual(shown["transient"]["display_id"], updated["transient"]["display_id"])
        named = self.ok('updateDisplay(handle.id(), "by its id");').published[-1]
        self.assertEqual("update_display_data", named[0])
        self.assertEqual(shown["transient"], named[1]["transient"])

    def test_update_from_a_later_cell(self):
        run = self.ok('handle.update("three");') if self.declared("handle") else None
        if run is None:
            self.ok('var handle = display("one");')
            run = self.ok('handle.update("three");')
        self.assertIn("three", [c["data"]["text/plain"] for _, k, c in run.strays if k == "update_display_data"])

    def declared(self, name):
        return self.run_cell(name, silent=True).status == "ok"

    def test_clear_output(self):
        self.assertEqual([{"wait": False}], self.ok("clearOutput()").contents("clear_output"))
        self.assertEqual([{"wait": False}], self.ok("clearOutput(false)").contents("clear_output"))
        self.assertEqual([{"wait": True}], self.ok("clearOutput(true)").contents("clear_output"))

    def test_progress_is_one_display(self):
        run = self.ok(
            'try (var p = progress("integrating", 40)) { for (int i = 0; i < 40; i++) { Thread.sleep(20); p.step(); } }')
        ids = {c["transient"]["display_id"] for k, c in run.published if k.endswith("display_data")}
        self.assertEqual(1, len(ids))
        self.assertEqual(1, len(run.contents("display_data")))
        last = run.contents("update_display_data")[-1]["data"]
        self.assertIn("40 of 40, 100 %", last["text/plain"])
        self.assertIn("<progress", last["text/html"])


class Assistance(KernelCase):
    def complete(self, code, cursor=None):
        answer = self.request("complete", code, cursor)
        self.assertEqual("ok", answer["status"])
        self.assertIn("metadata", answer)
        return answer

    def test_completion(self):
        for code, match, start in (
            ("Math.sqr", "sqrt(", 5),
            ("System.out.printl", "println(", 11),
            ("import java.util.ArrayLi", "ArrayList", 17),
            ("notebookFol", "notebookFolder()", 0),
        ):
            with self.subTest(code):
                answer = self.complete(code)
                self.assertEqual([match], answer["matches"])
                self.assertEqual((start, len(code)), (answer["cursor_start"], answer["cursor_end"]))

    def test_completion_knows_variables_of_earlier_cells_and_of_this_one(self):
        self.ok('String earlier = "x";')
        self.assertIn("earlier", self.complete("earl")["matches"])
        self.assertIn("length()", self.complete("earlier.len")["matches"])
        self.assertEqual(["further"], self.complete("import java.util.*;\nint further = 5;\nfurt")["matches"])
        self.assertIn("earlier", self.complete("earlier.concat(")["matches"])
        self.assertIn("size()", self.complete("var own = List.of(1);\nown.siz")["matches"])

    def test_completion_in_the_middle(self):
        answer = self.complete("Math.sqr + 1", 8)
        self.assertEqual((["sqrt("], 5, 8), (answer["matches"], answer["cursor_start"], answer["cursor_end"]))

    def test_completion_counts_code_points(self):
        answer = self.complete('"𝄞𝄞".leng')
        self.assertEqual((["length()"], 5, 9), (answer["matches"], answer["cursor_start"], answer["cursor_end"]))

    def test_no_completion(self):
        self.assertEqual([], self.complete("nothingStartsLikeThis")["matches"])

    def inspect(self, code, cursor=None):
        answer = self.request("inspect", code, cursor)
        self.assertEqual("ok", answer["status"])
        return answer

    def test_inspection(self):
        for code in ("Math.sqrt", "Math.sqrt(", "Math", "System.out.println", "String", "List.of(1).size"):
            with self.subTest(code):
                answer = self.inspect(code)
                self.assertTrue(answer["found"])
                self.assertIn("text/plain", answer["data"])
        self.assertIn("double Math.sqrt(double a)", self.inspect("Math.sqrt")["data"]["text/plain"])

    def test_inspection_shows_javadoc_of_attached_sources(self):
        for code, cursor in (("progress", 8), ('var p = progress("x", 3);', 12), ('progress("x", 3)', 13)):
            with self.subTest(code):
                data = self.inspect(code, cursor)["data"]
                self.assertIn("Shows how far a long computation has come", data["text/plain"])
                self.assertIn("Parameter steps: how many steps", data["text/plain"])
                self.assertIn("<code>steps</code>", data["text/html"])

    def test_inspection_finds_nothing(self):
        answer = self.inspect("nothingOfThisName")
        self.assertFalse(answer["found"])
        self.assertEqual({}, answer["data"])

    def test_is_complete(self):
        samples = {
            "complete": ["1 + 1", "int x = 5;", "int x = 5", 'System.out.println("hi");', "class A {}", "",
                         "for (int i = 0; i < 3; i++) {\n    x += i;\n}", "int a = 1;\nint b = 2;", "// comment"],
            "incomplete": ["for (int i = 0; i < 3; i++) {", "class A {", "foo(", 'String s = """\nx', "int a = 1;\nif (a > 0) {",
                           "int f(int x) {\n    return x;", "x +", "/* open"],
            "invalid": ["int x = = 5;", ")(", '"abc', "int 2x = 3;", "import = 7;", "class A { int x = ; }", "}"],
        }
        for status, codes in samples.items():
            for code in codes:
                with self.subTest(code):
                    answer = self.request("is_complete", code)
                    self.assertEqual(status, answer["status"])
                    self.assertEqual(status == "incomplete", "indent" in answer)


class HistoryRequests(KernelCase):
    CODES = ["6 * 7", "12 + 13", "int nothing = 1;"]
    RESULTS = ["42", "25", None]

    def history(self, **options):
        answer = self.request("history", **options)
        self.assertEqual("ok", answer["status"])
        return answer["history"]

    def test_history(self):
        for code in self.CODES:
            self.ok(code)
        tail = self.history(hist_access_type="tail", n=3, raw=True, output=True)
        self.assertEqual([[c, r] for c, r in zip(self.CODES, self.RESULTS)], [entry[2] for entry in tail])
        session, line = tail[0][:2]
        for number in (session, 0):
            ranged = self.history(
                hist_access_type="range", session=number, start=line, stop=line + 2, raw=True, output=False)
            self.assertEqual([[session, line, "6 * 7"], [session, line + 1, "12 + 13"]], ranged)
        self.assertEqual([], self.history(hist_access_type="range", session=99, start=0, stop=9))
        for pattern in ("1?*3", "1* *13", "12 + 13"):
            found = self.history(hist_access_type="search", pattern=pattern, raw=True, output=False)
            self.assertEqual([[session, line + 1, "12 + 13"]], found)
        self.ok("6 * 7")
        self.assertEqual(2, len(self.history(hist_access_type="search", pattern="6*7")))
        self.assertEqual(1, len(self.history(hist_access_type="search", pattern="6*7", unique=True)))
        last = self.history(hist_access_type="search", pattern="*", n=1)
        self.assertEqual(["6 * 7"], [entry[2] for entry in last])


if __name__ == "__main__":
    unittest.main()
