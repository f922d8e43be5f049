# The API on workerd alone: workerd serve apps/api/deploy/workerd.capnp
using Workerd = import "/workerd/workerd.capnp";

const config :Workerd.Config = (
  services = [(name = "api", worker = .api)],
  sockets = [(name = "http", address = "127.0.0.1:8787", http = (), service = "api")],
);

const api :Workerd.Worker = (
  modules = [
    (name = "workerd.js", esModule = embed "../dist/workerd.js"),
    (name = "rendered.js", esModule = embed "../dist/rendered.js"),
  ],
  compatibilityDate = "2026-11-01",
);
