// The program, Debian's Jupyter with our kernel installed for it, and notebooks executed by either.
const { execFile, spawn } = require('node:child_process');
const fs = require('node:fs');
const net = require('node:net');
const os = require('node:os');
const path = require('node:path');
const { promisify } = require('node:util');

const run = promisify(execFile);
const root = path.resolve(__dirname, '../../../../..');
const jar = path.join(root, 'lib/cli/target/staunch.jar');
const java = process.env.JAVA_HOME ? path.join(process.env.JAVA_HOME, 'bin/java') : 'java';
const PATIENCE = 240_000;

/** A new folder below the build's own, where a notebook finds {@code data/} as it does in {@code notebooks/}. */
function workFolder(name) {
  const folder = path.join(root, 'lib/cli/target/notebook-tests', name);
  fs.rmSync(folder, { recursive: true, force: true });
  fs.mkdirSync(folder, { recursive: true });
  return folder;
}

/** Ends with the exit code and what was printed, whatever the code is. */
async function command(program, args, env = process.env, cwd = root) {
  try {
    const { stdout, stderr } = await run(program, args, { cwd, env, timeout: PATIENCE, maxBuffer: 1 << 26 });
    return { code: 0, stdout, stderr };
  } catch (e) {
    if (typeof e.code !== 'number') {
      throw e;
    }
    return { code: e.code, stdout: e.stdout, stderr: e.stderr };
  }
}

async function mustRun(program, args, env, cwd) {
  const ended = await command(program, args, env, cwd);
  if (ended.code !== 0) {
    throw new Error(`${program} ${args.join(' ')} ended with ${ended.code}\n${ended.stdout}\n${ended.stderr}`);
  }
  return ended;
}

const staunch = (args, env) => command(java, ['-jar', jar, ...args], env);
const mustStaunch = (args, env) => mustRun(java, ['-jar', jar, ...args], env);

/** The environment of a user who has nothing but our kernel installed; {@code STAUNCH_JUPYTER} names one to share. */
async function jupyterEnvironment() {
  const home = process.env.STAUNCH_JUPYTER || fs.mkdtempSync(path.join(os.tmpdir(), 'staunch-jupyter-'));
  const env = { ...process.env, PATH: `/usr/bin:/bin:${process.env.PATH}`, HOME: home, PYTHONWARNINGS: 'ignore' };
  for (const name of ['DATA', 'CONFIG', 'RUNTIME']) {
    env[`JUPYTER_${name}_DIR`] = path.join(home, name.toLowerCase());
  }
  env.IPYTHONDIR = path.join(home, 'ipython');
  if (!process.env.STAUNCH_JUPYTER) {
    await mustStaunch(['kernel', 'install', '--user'], env);
  }
  const remove = () => process.env.STAUNCH_JUPYTER || fs.rmSync(home, { recursive: true, force: true });
  return { env, remove };
}

const nbconvert = (env, args) => mustRun('/usr/bin/jupyter-nbconvert', args, env);

/** Executes notebooks in their own folders with real Jupyter. */
const execute = (env, out, notebooks, ...more) =>
  nbconvert(env, ['--to', 'notebook', '--execute', '--ExecutePreprocessor.timeout=180',
    '--ExecutePreprocessor.startup_timeout=180', '--output-dir', out, ...more, ...notebooks]);

/** Pages of executed notebooks, as Jupyter makes them. */
const pages = (env, out, theme, notebooks) =>
  nbconvert(env, ['--to', 'html', `--HTMLExporter.theme=${theme}`, '--output-dir', out, ...notebooks]);

async function freePort() {
  const server = net.createServer();
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address();
  await new Promise((done) => server.close(done));
  return port;
}

/** Starts Debian's jupyter-notebook on the loopback interface, in {@code folder}; stop() ends it and its kernels. */
async function notebookServer(env, folder) {
  const port = await freePort();
  const server = spawn(
    '/usr/bin/jupyter-notebook',
    ['--no-browser', '--allow-root', '--ip=127.0.0.1', `--port=${port}`, '--NotebookApp.port_retries=0',
      '--NotebookApp.token=', '--NotebookApp.password=', `--notebook-dir=${folder}`],
    { env, cwd: folder, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  let log = '';
  let ended = false;
  server.stderr.on('data', (data) => (log += data));
  const exit = new Promise((done) => server.on('exit', () => done((ended = true))));
  const url = `http://127.0.0.1:${port}`;
  const stop = async () => {
    server.kill('SIGTERM');
    await exit;
  };
  const deadline = Date.now() + PATIENCE;
  for (;;) {
    try {
      if ((await fetch(`${url}/api/status`)).ok) {
        return { url, stop, log: () => log };
      }
    } catch (e) {
      if (ended || Date.now() > deadline) {
        await stop();
        throw new Error(`jupyter-notebook did not start\n${log}`);
      }
    }
    await new Promise((done) => setTimeout(done, 200));
  }
}

/** A notebook's text without its outputs: the source of each cell. */
const read = (file) => JSON.parse(fs.readFileSync(file, 'utf8'));
const joined = (text) => (Array.isArray(text) ? text.join('') : text ?? '');

module.exports = {
  root, workFolder, staunch, mustStaunch, jupyterEnvironment, execute, pages, notebookServer, read, joined, PATIENCE,
};
