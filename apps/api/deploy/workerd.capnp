# The API on workerd, its keys and limits out of the environment: ALLOW_ANONYMOUS=1 workerd serve apps/api/deploy/workerd.capnp
using Workerd = import "/workerd/workerd.capnp";

const config :Workerd.Config = (
  services = [(name = "api", worker = .api)],
  sockets = [(name = "http", address = "127.0.0.1:8787", http = (), service = "api")],
);

const api :Workerd.Worker = (
  modules = [
    (name = "workerd.js", esModule = embed "../dist/workerd.js"),
    # loaded when they are needed: what operations share, the operations, the document
    (name = "part-1.js", esModule = embed "../dist/part-1.js"),
    (name = "part-2.js", esModule = embed "../dist/part-2.js"),
    (name = "part-3.js", esModule = embed "../dist/part-3.js"),
    (name = "part-4.js", esModule = embed "../dist/part-4.js"),
    (name = "part-5.js", esModule = embed "../dist/part-5.js"),
    (name = "part-rigs.js", esModule = embed "../dist/part-rigs.js"),
    (name = "part-outings.js", esModule = embed "../dist/part-outings.js"),
    (name = "part-channels.js", esModule = embed "../dist/part-channels.js"),
    (name = "rendered.js", esModule = embed "../dist/rendered.js"),
  ],
  bindings = [
    (name = "ALLOW_ANONYMOUS", fromEnvironment = "ALLOW_ANONYMOUS"),
    (name = "PLUMBDRIFT_API_KEYS", fromEnvironment = "PLUMBDRIFT_API_KEYS"),
    (name = "PLUMBDRIFT_CORS_ORIGINS", fromEnvironment = "PLUMBDRIFT_CORS_ORIGINS"),
    (name = "PLUMBDRIFT_RATE_UNITS", fromEnvironment = "PLUMBDRIFT_RATE_UNITS"),
    (name = "PLUMBDRIFT_RATE_SECONDS", fromEnvironment = "PLUMBDRIFT_RATE_SECONDS"),
    (name = "PLUMBDRIFT_LOG", fromEnvironment = "PLUMBDRIFT_LOG"),
  ],
  compatibilityDate = "2026-11-01",
);
