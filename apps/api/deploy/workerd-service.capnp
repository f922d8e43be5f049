# The API on workerd with its keys and limits, out of the environment: workerd serve apps/api/deploy/workerd-service.capnp
using Workerd = import "/workerd/workerd.capnp";

const config :Workerd.Config = (
  services = [(name = "api", worker = .api)],
  sockets = [(name = "http", address = "127.0.0.1:8787", http = (), service = "api")],
);

const api :Workerd.Worker = (
  modules = [
    (name = "workerd-service.js", esModule = embed "../dist/workerd-service.js"),
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
